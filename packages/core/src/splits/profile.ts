import { samePlace } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { deviationOf, greatestOf, leastOf, meanOf, sumOf } from '../statistics.js';
import type { Hundredths } from '../time/hundredths.js';
import { lapsOf } from './laps.js';
import { finishOf, type Splits, splitsOf } from './splits.js';

/** How a swim's effort was spread over its laps. */
export interface PacingProfile {
  /** The lap times, in hundredths of a second. */
  readonly laps: readonly Hundredths[];
  /** Each lap against the mean lap, as a ratio less one: −0.02 is two percent faster. */
  readonly againstMean: readonly number[];
  /** The mean lap, in hundredths of a second, not rounded. */
  readonly mean: number;
  /** Standard deviation of the laps (with n − 1), in hundredths of a second, not rounded. */
  readonly spread: number;
  /** The spread over the mean, a ratio: the coefficient of variation. */
  readonly variation: number;
  /** What the laps between the first and the last show, free of dive and finish. */
  readonly middle: {
    /** Their mean, in hundredths of a second, not rounded. */
    readonly mean: number;
    /** Their coefficient of variation, a ratio; 0 for a single lap. */
    readonly variation: number;
    /** Slope of a straight line through them, in hundredths per lap: above zero is slowing. */
    readonly drift: number;
  };
  /** The first lap against the middle, as a ratio less one; a dive makes it negative. */
  readonly first: number;
  /** The last lap against the middle, as a ratio less one; a finish lift makes it negative. */
  readonly last: number;
  /** The number of the fastest lap, a count from 1; the earliest of equals. */
  readonly fastest: number;
  /** The number of the slowest lap, a count from 1; the earliest of equals. */
  readonly slowest: number;
}

/**
 * Describes the pacing of a swim by its laps: each against the mean, the spread, the drift of the
 * middle laps, and the first and last lap against them. For swims of three laps or more; shorter ones are
 * told by their halves ({@link compareHalves}).
 *
 * An alternating pattern, odd laps against even ones, is neither a slip nor a pacing error: water in
 * a pool can run. Over laps of 100 in a 50 m pool it cancels: give 100 for `every`.
 *
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @param every - The stretch of a lap in the pool's unit; from each mark to the next unless given.
 * @returns The profile; times in hundredths of a second, the rest plain ratios.
 * @throws {@link PacingError} `too-few-laps` under three laps; `laps-uneven` where the laps are not
 *   of one length; `no-mark-there`; `wrong-shape` and the codes of {@link splitsFromMarks}.
 * @example
 * const swim = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));
 * const { middle, first, last } = pacingProfile(swim);
 * middle.drift; // => 75
 * [first, last].map((share) => `${(100 * share).toFixed(1)} %`); // => ['-8.8 %', '-0.9 %']
 * @see Lipińska, Allen and Hopkins 2016, Int. J. Sports Physiol. Perform. 11(2), for describing a
 *   swim by drift, first and last laps and scatter; Cornett et al. 2015, Med. Sci. Sports Exerc.
 *   47(3), for water that runs.
 */
export function pacingProfile(splits: Splits, every?: number): PacingProfile {
  const swim = splitsOf(splits);
  const laps = lapsOf(swim, every);
  if (laps.length < 3) {
    const message = `A profile needs at least three laps, not ${laps.length}; use the halves instead.`;
    throw new PacingError('too-few-laps', message, splits);
  }
  if (every === undefined) requireEven(swim);
  const middle = laps.slice(1, -1);
  const mean = meanOf(laps);
  const middleMean = meanOf(middle);
  const against = (lap: number, reference: number): number => lap / reference - 1;
  const spread = deviationOf(laps);
  return {
    laps,
    againstMean: laps.map((lap) => against(lap, mean)),
    mean,
    spread,
    variation: spread / mean,
    middle: {
      mean: middleMean,
      variation: deviationOf(middle) / middleMean,
      drift: driftOf(middle),
    },
    first: against(laps[0] as number, middleMean),
    last: against(laps[laps.length - 1] as number, middleMean),
    fastest: laps.indexOf(leastOf(laps)) + 1,
    slowest: laps.indexOf(greatestOf(laps)) + 1,
  };
}

function requireEven(swim: Splits): void {
  const every = finishOf(swim).distance / swim.marks.length;
  if (swim.marks.every(({ distance }, i) => samePlace(distance, every * (i + 1)))) return;
  const message = 'The marks are not evenly spaced; choose one lap length that ends at marks.';
  throw new PacingError('laps-uneven', message, swim);
}

/** Slope of the straight line through laps numbered one by one. */
function driftOf(laps: readonly number[]): number {
  if (laps.length < 2) return 0;
  const centre = (laps.length - 1) / 2;
  const squares = (laps.length * (laps.length ** 2 - 1)) / 12; // Σ(i − centre)²
  return sumOf(laps.map((lap, i) => (i - centre) * lap)) / squares;
}
