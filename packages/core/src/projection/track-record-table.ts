import { itemsOf, numberOf } from '../check.js';
import type { Interval } from './line-fit.js';
import { exponentSeen, ninetyPercent, type Seen } from './recorded-range.js';
import { EXPONENTS_SEEN, FITS_SEEN } from './track-record.js';

/** How a method did over published races: from which distances, to which one, and how near. */
export interface TrackRecordRow {
  /** The method's name, as its estimates have it. */
  readonly method: string;
  /** The exponent that was given, a ratio; null where it was fitted. */
  readonly exponent: number | null;
  /** The distances it was worked out from, in metres. */
  readonly from: readonly number[];
  /** The distance it was worked out for, in metres. */
  readonly to: number;
  /** Who swam: `men`, `women`, or both. */
  readonly who: string;
  /** How many swims it was held against, a count. */
  readonly swims: number;
  /** Geometric mean of estimated over swum, as a ratio less one: below zero promised too fast. */
  readonly bias: number;
  /** Standard deviation of the logarithm of that, a ratio. */
  readonly spread: number;
  /** The range of 90 %, as ratios to the estimate. */
  readonly range: Interval;
  /** How many of the swims lay in the range that the other Games alone would give, a count. */
  readonly covered: number;
}

/**
 * The track record of every method that takes races, over the best times of each swimmer at one of
 * four Olympic Games: how far off each was, before you trust it. It says nothing about other swimmers, practice,
 * or short-course pools. Exponents to ask about are in {@link REFERENCE_EXPONENTS}.
 *
 * @param exponents - The given exponents to show for the power law from one race, each a ratio from 1 to 2.
 * @returns One row a method and pair of distances (in metres); the rest are ratios and counts.
 * @throws {@link PacingError} `wrong-shape` where the exponents are not a list; `out-of-range` for one outside
 *   1 to 2.
 * @example
 * const to1500 = trackRecord([1.04]).filter(({ to }) => to === 1500);
 * to1500.map(({ method, from, bias }) => `${method}, ${from.join('+')}: ${(100 * bias).toFixed(1)} %`);
 * // => ['power-law, 200: -3.3 %', 'power-law, 400: -0.4 %', 'critical-speed, 200+400: -3.0 %', 'power-law, 200+400: 2.9 %']
 * @see Official results of the Olympic Games of 2000, 2004, 2008 and 2016, by the open dataset swimset.
 */
export function trackRecord(exponents: readonly number[]): readonly TrackRecordRow[] {
  const given = itemsOf(exponents, 'The exponents').map((exponent) =>
    numberOf(exponent, 'An exponent', { min: 1, max: 2 }),
  );
  const shares = ({ mean, spread, swims, who }: Seen) => ({
    who,
    swims,
    bias: Math.exp(-mean) - 1,
    spread,
  });
  return [
    ...given.flatMap((exponent) =>
      EXPONENTS_SEEN.map(({ between: [from, to], covered }) => {
        const seen = exponentSeen(exponent, from, to) as Seen;
        const range = ninetyPercent(seen);
        return { method: 'power-law', exponent, from: [from], to, ...shares(seen), range, covered };
      }),
    ),
    ...FITS_SEEN.map((seen) => {
      const { method, from, to, covered } = seen;
      const range = ninetyPercent(seen);
      return { method, exponent: null, from, to, ...shares(seen), range, covered };
    }),
  ];
}
