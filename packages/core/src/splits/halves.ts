import { fieldsOf } from '../check.js';
import { samePlace } from '../course/pool.js';
import { PacingError } from '../errors.js';
import {
  differenceOf,
  type Hundredths,
  hundredths,
  nearestHundredth,
  timeOf,
} from '../time/hundredths.js';
import { finishOf, type Splits, splitsOf } from './splits.js';

/** A swim in two halves. `first + second` is the swim's time, exactly. */
export interface Halves {
  /** Time to halfway, in hundredths of a second. */
  readonly first: Hundredths;
  /** Time from halfway to the finish, in hundredths of a second. */
  readonly second: Hundredths;
  /** True where no mark stood at halfway and `first` was read off a straight line between marks. */
  readonly interpolated: boolean;
}

/** How a second half compares with the first: `negative` faster, `positive` slower, `even` within the tolerance. */
export type SplitVerdict = 'negative' | 'even' | 'positive';

/** The halves of a swim, compared. */
export interface HalfComparison {
  /** Second half minus first, in hundredths of a second; below zero is a negative split. */
  readonly difference: Hundredths;
  /** Second half over first, a plain ratio; below one is a negative split. */
  readonly ratio: number;
  /** Negative: the second half was faster; even: within the largest difference still called even. */
  readonly verdict: SplitVerdict;
}

/**
 * Cuts a swim into its first and second half.
 *
 * Where no mark stands at halfway (a 500 marked every 100), the time there is read off a straight
 * line between the marks on either side, to the nearest hundredth, and the halves say so. The
 * rounding falls on the first half only, so the two always add up. Compare them with
 * {@link compareHalves}.
 *
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @returns Both halves, in hundredths of a second.
 * @throws {@link PacingError} `halfway-not-bracketed` where no mark stands at or before halfway: half
 *   of a finish time is a guess, not a reading; `wrong-shape` and the codes of
 *   {@link splitsFromMarks} where it is not a swim.
 * @example
 * const swim = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));
 * halvesOf(swim); // => { first: 5855, second: 6175, interpolated: false }
 */
export function halvesOf(splits: Splits): Halves {
  const swim = splitsOf(splits);
  const halves = halvesIfMarked(swim);
  if (halves !== null) return halves;
  const message = 'The swim has no mark at or before halfway; add one split from its first half.';
  throw new PacingError('halfway-not-bracketed', message, splits);
}

/** The halves of a checked swim, or null where nothing marks its first half. */
export function halvesIfMarked(swim: Splits): Halves | null {
  const { marks } = swim;
  const finish = finishOf(swim);
  const halfway = finish.distance / 2;
  const there = marks.find((mark) => samePlace(mark.distance, halfway));
  if (there !== undefined) return cut(there.time, finish.time, false);

  const after = marks.findIndex((mark) => mark.distance > halfway);
  const [left, right] = [marks[after - 1], marks[after]];
  if (left === undefined || right === undefined) return null;
  // Multiply first, divide once: whole numbers stay exact, so a tie is seen as a tie.
  const run = (halfway - left.distance) * (right.time - left.time);
  return cut(left.time + run / (right.distance - left.distance), finish.time, true);
}

function cut(timeAtHalf: number, total: Hundredths, interpolated: boolean): Halves {
  const first = nearestHundredth(timeAtHalf);
  return { first, second: hundredths(total - first), interpolated };
}

/** What {@link compareHalves} calls even. */
export interface CompareHalvesOptions {
  /** The largest difference still called even, in hundredths of a second; 0 unless given. */
  readonly evenWithin?: Hundredths;
}

/**
 * Compares the halves of a swim: a negative split, an even or a positive one, and by how much.
 *
 * How large a difference still counts as even is a coach's choice: no published value was found, so
 * the tolerance is zero unless you state one. One swimmer's laps vary by 1 to 2 % from meet to meet
 * anyway, which argues for not less than half a percent of a half.
 *
 * @param halves - The halves, in hundredths of a second; see {@link halvesOf}.
 * @param options - What still counts as even, in hundredths of a second.
 * @returns The signed difference in hundredths of a second, the ratio, and the verdict.
 * @throws {@link PacingError} `not-a-time` where a half or the tolerance is not one; `out-of-range`
 *   for a tolerance below zero; `wrong-shape`.
 * @example
 * const halves = halvesOf(splitsFromLaps(50, [3150, 3350].map(hundredths)));
 * const { difference, verdict } = compareHalves(halves);
 * [difference, verdict]; // => [200, 'positive']
 * @example
 * const halves = halvesOf(splitsFromLaps(50, [3230, 3270].map(hundredths)));
 * compareHalves(halves, { evenWithin: fromSeconds(0.5) }).verdict; // => 'even'
 * @see Skorski et al. 2014, Int. J. Sports Physiol. Perform. 9(2), for how much laps vary.
 */
export function compareHalves(halves: Halves, options: CompareHalvesOptions = {}): HalfComparison {
  const { first, second } = fieldsOf(halves, 'The halves');
  const { evenWithin = 0 } = fieldsOf(options, 'The options');
  const a = timeOf(first, 'The first half');
  const b = timeOf(second, 'The second half');
  const tolerance = toleranceOf(evenWithin);
  const difference = hundredths(b - a);
  const even = Math.abs(difference) <= tolerance;
  const verdict = even ? 'even' : difference < 0 ? 'negative' : 'positive';
  return { difference, ratio: b / a, verdict };
}

/** The largest difference still called even, out of plain data. */
export function toleranceOf(value: unknown): Hundredths {
  const tolerance = differenceOf(value, 'The tolerance');
  if (tolerance >= 0) return tolerance;
  throw new PacingError('out-of-range', 'The tolerance must be zero or more.', value);
}
