import { type Caution, cautionsWhere } from '../caution.js';
import type { TimeRange } from '../time/time-range.js';
import { rangeBetween } from './estimate-range.js';
import type { Interval } from './line-fit.js';
import { studentT } from './student-t.js';
import { EXPONENTS_SEEN, FITS_SEEN } from './track-record.js';
import type { Trial } from './trial.js';

/** How swims came out against estimates, over one group of swimmers. */
export interface Seen {
  /** How many swims. */
  readonly swims: number;
  /** Who swam: `men`, `women`, or both. */
  readonly who: string;
  /** Mean of ln(swum / estimated). */
  readonly mean: number;
  /** Its standard deviation, with n − 1. */
  readonly spread: number;
}

/** The track record of a method fitted to two trials; null where it has none. */
export function fitsSeen(method: string, trials: readonly Trial[], to: number): Seen | null {
  const from = trials.map(({ distance }) => distance).join();
  return (
    FITS_SEEN.find((row) => row.method === method && row.from.join() === from && row.to === to) ??
    null
  );
}

/** The track record of a given exponent from one distance to another, either way round; or null. */
export function exponentSeen(exponent: number, from: number, to: number): Seen | null {
  const ends = [from, to].sort((a, b) => a - b).join();
  const row = EXPONENTS_SEEN.find((seen) => seen.between.join() === ends);
  if (row === undefined) return null;
  const growth = Math.log(to / from);
  return {
    ...row,
    mean: (row.mean - exponent) * growth,
    spread: row.spread * Math.abs(growth),
  };
}

/** Where 90 % of further swims lie against the estimate, as ratios to it. */
export function ninetyPercent({ swims, mean, spread }: Seen): Interval {
  const margin = studentT(0.95, swims - 1) * spread * Math.sqrt(1 + 1 / swims);
  return { low: Math.exp(mean - margin), high: Math.exp(mean + margin) };
}

/** The range that the track record gives an estimate, stretched to take in the estimate itself. */
export function recordedRange(
  time: number,
  seen: Seen | null,
): { range: TimeRange | null; cautions: readonly Caution[] } {
  if (seen === null) return { range: null, cautions: [] };
  const { low, high } = ninetyPercent(seen);
  const outside = low > 1 || high < 1;
  const covers = `90 % of swims like those of ${seen.swims} ${seen.who} in the official results of four Olympic Games, 2000–2016, elite, 50 m pool${outside ? ', and the estimate itself' : ''}; it says nothing of other swimmers and pools`;
  const bias = 100 * Math.expm1(-seen.mean);
  return {
    range: rangeBetween(time * Math.min(low, 1), time * Math.max(high, 1), covers),
    cautions: cautionsWhere([
      Math.abs(seen.mean) > seen.spread,
      'biased-record',
      `For those swims the method was ${Math.abs(bias).toFixed(1)} % too ${bias < 0 ? 'fast' : 'slow'} on average.`,
    ]),
  };
}
