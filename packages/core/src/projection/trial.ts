import { choiceOf, fieldsOf, itemsOf, numberOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { snap, type Unit } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';

/** One swim over a distance, as fast as it could be swum: a race, or a trial in practice. */
export interface Trial {
  /** The distance in metres, or in `unit`; from one metre to a million. */
  readonly distance: number;
  /** The unit of `distance`; metres unless given. Whatever is fitted comes out in metres. */
  readonly unit?: Unit;
  /** The time, in hundredths of a second. */
  readonly time: Hundredths;
}

/** A distance to swim in metres, to a micrometre, out of plain data. */
export function metresOf(value: unknown, what: string): number {
  return snap(numberOf(value, what, { min: 1, max: 1e6 }));
}

/** One trial out of plain data, in metres. */
export function trialOf(value: unknown, what: string): Trial {
  const { distance, unit = 'm', time } = fieldsOf(value, what);
  const swum = timeOf(time, `${what}'s time`);
  numberOf(swum, `${what}'s time in hundredths`, { max: 1e9 }); // 116 days: beyond it sums lose digits
  const given = numberOf(distance, `${what}'s distance`, { min: 1, max: 1e6 });
  const metres = convertDistance(given, choiceOf(unit, ['m', 'yd'], `${what}'s unit`), 'm');
  return { distance: metresOf(metres, `${what}'s distance in metres`), time: swum };
}

/** Two or more trials, shortest first, that one swimmer could have swum flat out. */
export function trialsOf(value: unknown): readonly Trial[] {
  const trials = itemsOf(value, 'The trials')
    .map((trial, i) => trialOf(trial, `Trial ${i + 1}`))
    .sort((a, b) => a.distance - b.distance);
  if (trials.length < 2) {
    const message = `A fit needs two trials or more, not ${trials.length}; add one.`;
    throw new PacingError('too-few-trials', message, value);
  }
  trials.slice(1).forEach((longer, i) => {
    requireSlower(longer, trials[i] as Trial, value);
  });
  return trials;
}

function requireSlower(longer: Trial, shorter: Trial, value: unknown): void {
  if (longer.distance === shorter.distance) {
    const message = `Two trials are of ${longer.distance} m; keep the better one.`;
    throw new PacingError('trial-repeated', message, value);
  }
  if (longer.distance * shorter.time < shorter.distance * longer.time) return;
  const message = `The ${longer.distance} m was swum no slower than the ${shorter.distance} m; check both times or leave one out.`;
  throw new PacingError('trials-contradict', message, value);
}
