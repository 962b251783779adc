import { cautionsWhere } from '../caution.js';
import { fieldsOf } from '../check.js';
import { PacingError } from '../errors.js';
import { type CriticalSpeed, fitCriticalSpeed, lineOf } from './critical-speed.js';
import type { Estimate } from './estimate.js';
import type { Interval, LineFit } from './line-fit.js';
import { fitsSeen } from './recorded-range.js';
import { metresOf, type Trial } from './trial.js';
import { trialEstimate } from './trial-estimate.js';

/**
 * The time critical speed gives for a distance, for swims of 2 to 30 minutes: (distance − reserve) / speed. The
 * model is contested; see {@link fitCriticalSpeed}, and lay {@link timeFromPowerLaw} beside it.
 *
 * With three or more trials the range is the exact 95 % prediction interval of one more swim on the
 * line. With two it comes from the track record where that has the same distances; else there is none.
 *
 * @param model - A critical speed as {@link fitCriticalSpeed} gives it; its trials are fitted anew.
 * @param distance - The distance to swim, in metres.
 * @returns The estimate, in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for a distance not from 1 to a million or within the
 *   reserve; `not-a-time` where it takes less than a hundredth; `too-large`; and the codes of
 *   {@link fitCriticalSpeed}.
 * @example
 * const trials = [
 *   { distance: 200, time: parseTime('2:20.00') },
 *   { distance: 400, time: parseTime('4:55.00') },
 *   { distance: 800, time: parseTime('10:12.00') },
 * ];
 * const race = timeFromCriticalSpeed(fitCriticalSpeed(trials), 1500);
 * formatTime(race.time); // => '19:22.77'
 * race.range && [race.range.low, race.range.high].map((time) => formatTime(time)); // => ['18:23.35', '20:30.18']
 * @see Wakayoshi et al. 1992, Eur. J. Appl. Physiol. 64(2), for the model in swimming.
 */
export function timeFromCriticalSpeed(model: CriticalSpeed, distance: number): Estimate {
  const given = fieldsOf(model, 'The critical speed')['trials'] as readonly Trial[];
  const { trials, speed, reserve, validity, cautions } = fitCriticalSpeed(given);
  const metres = metresOf(distance, 'The distance');
  if (metres <= reserve) {
    const message = `The reserve alone is ${reserve.toFixed(1)} m; choose a distance longer than that.`;
    throw new PacingError('out-of-range', message, distance);
  }
  const time = (100 * (metres - reserve)) / speed;
  const method = 'critical-speed';
  return trialEstimate({
    method,
    trials,
    metres,
    time,
    predicted: timesThatFit(lineOf(trials), metres),
    seen: fitsSeen(method, trials, metres),
    assumption: `Pace settles: past a reserve of ${reserve.toFixed(1)} m, every metre is swum at ${speed.toFixed(3)} m/s.`,
    cautions: [
      ...cautions,
      ...cautionsWhere([
        time < validity.from || time > validity.to,
        'outside-validity',
        'Critical speed is meant for swims of 2 to 30 minutes.',
      ]),
    ],
  });
}

/**
 * All times, in hundredths of a second, whose 95 % prediction interval takes in a distance: both
 * roots, from the centre, of (d − slope·u)² = t²s²(1 + 1/n + u²/Σx²). None where the slope may as
 * well be zero.
 */
function timesThatFit(line: LineFit, metres: number): Interval | null {
  const { slope, x, y, squares, residuals, scatter } = line;
  if (scatter === null) return null;
  const margin = (scatter.t * scatter.deviation) ** 2;
  const steep = slope ** 2 - margin / squares;
  if (steep <= 0) return null;
  const d = metres - y;
  const root = Math.sqrt(margin * ((1 + 1 / residuals.length) * steep + (d * d) / squares));
  const end = (side: number) => 100 * (x + (slope * d + side * root) / steep);
  return { low: end(-1), high: end(1) };
}
