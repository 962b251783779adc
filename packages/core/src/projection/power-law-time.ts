import { cautionsWhere } from '../caution.js';
import { fieldsOf, itemsOf } from '../check.js';
import type { Estimate } from './estimate.js';
import type { Interval, LineFit } from './line-fit.js';
import { fitPowerLaw, logLineOf, type PowerLaw, powerLawThrough } from './power-law.js';
import { exponentSeen, fitsSeen } from './recorded-range.js';
import { metresOf, type Trial } from './trial.js';
import { trialEstimate } from './trial-estimate.js';

// Savaglio and Carbone 2000, as quoted elsewhere: the line of records bends between about 150 and 170 s.
const BEND = { from: 15_000, to: 17_000 };

/**
 * The time a power law gives for a distance. The model is contested; see {@link fitPowerLaw}, and lay
 * {@link timeFromCriticalSpeed} beside it.
 *
 * With three or more races the range is the 95 % prediction interval of one more race on the line.
 * With fewer it comes from the track record where that has the same distances; else there is none.
 *
 * @param model - A power law as {@link fitPowerLaw} or {@link powerLawThrough} gives it; its races are
 *   fitted anew.
 * @param distance - The distance to swim, in metres.
 * @returns The estimate, in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for a distance not from 1 to a million; `not-a-time` where
 *   it takes less than a hundredth; `too-large`; and the codes of {@link fitPowerLaw} and
 *   {@link powerLawThrough}.
 * @example
 * const races = [
 *   { distance: 400, time: parseTime('4:00.00') },
 *   { distance: 800, time: parseTime('8:14.00') },
 *   { distance: 1500, time: parseTime('15:48.00') },
 * ];
 * formatTime(timeFromPowerLaw(fitPowerLaw(races), 1000).time); // => '10:22.32'
 * @see Riegel 1981, Am. Sci.
 */
export function timeFromPowerLaw(model: PowerLaw, distance: number): Estimate {
  const { results: swims, exponent: given } = fieldsOf(model, 'The power law');
  const races = itemsOf(swims, 'The races') as readonly Trial[];
  const alone = races.length === 1;
  const law = alone ? powerLawThrough(races[0] as Trial, given as number) : fitPowerLaw(races);
  const { results: trials, exponent, referenceDistance } = law;
  const metres = metresOf(distance, 'The distance');
  const time = 100 * law.factor * metres ** exponent;
  const method = 'power-law';
  const times = [time, ...trials.map((trial) => trial.time)];
  return trialEstimate({
    method,
    trials,
    metres,
    time,
    predicted: alone ? null : timesThatFit(logLineOf(trials), time, metres),
    seen: alone
      ? exponentSeen(exponent, referenceDistance, metres)
      : fitsSeen(method, trials, metres),
    assumption: `Pace keeps fading: twice the distance takes ${(2 ** exponent).toFixed(3)} times as long (exponent ${exponent.toFixed(3)}).`,
    cautions: [
      ...law.cautions,
      ...cautionsWhere([
        times.some((t) => t < BEND.from) && times.some((t) => t > BEND.to),
        'bend-crossed',
        'The line of records bends at 150 to 170 s, and these swims lie on both sides.',
      ]),
    ],
  });
}

/** The 95 % prediction interval of one more race on the line. */
function timesThatFit(line: LineFit, time: number, metres: number): Interval | null {
  const { x, squares, residuals, scatter } = line;
  if (scatter === null) return null;
  const off = Math.log(metres) - x;
  const error = scatter.deviation * Math.sqrt(1 + 1 / residuals.length + (off * off) / squares);
  const stretch = Math.exp(scatter.t * error);
  return { low: time / stretch, high: time * stretch };
}
