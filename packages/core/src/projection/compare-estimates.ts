import { type Caution, cautionsWhere } from '../caution.js';
import { countOf, itemsOf } from '../check.js';
import { greatestOf, leastOf } from '../statistics.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import type { Estimate } from './estimate.js';
import { estimateOf } from './read-estimate.js';

/** Two estimates held against each other. */
export interface EstimatePair {
  /** The place of the faster one in the ordered list, a count from 0. */
  readonly faster: number;
  /** The place of the slower one there, a count from 0. */
  readonly slower: number;
  /** How much slower, in hundredths of a second. */
  readonly difference: Hundredths;
  /** Whether their ranges meet; `unknown` where one has none. */
  readonly ranges: 'overlap' | 'apart' | 'unknown';
  /** What both ranges take in, in hundredths of a second; null where they do not meet. */
  readonly overlap: { readonly low: Hundredths; readonly high: Hundredths } | null;
  /** Why they differ: what each takes for granted. */
  readonly why: string;
}

/** Where a goal lies against one estimate. */
export interface GoalPlace {
  /** The goal less the estimate, in hundredths of a second; below zero asks for more than it promises. */
  readonly difference: Hundredths;
  /** Against the range: faster than all of it, within, slower than all of it; `unknown` without one. */
  readonly place: 'faster' | 'within' | 'slower' | 'unknown';
}

/** Estimates side by side, fastest first. */
export interface Comparison {
  /** The estimates, fastest first; equal ones in the order given. */
  readonly estimates: readonly Estimate[];
  /** Every pair of them. */
  readonly pairs: readonly EstimatePair[];
  /** Where the goal lies against each, in the same order; null without a goal. */
  readonly goal: readonly GoalPlace[] | null;
  /** What to know before trusting the comparison. */
  readonly cautions: readonly Caution[];
}

/** What sets a method apart. A method that is not here speaks by its own first assumption. */
const PREMISES: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['back-half', 'the second half of a practice rep is the pace a race is held at'],
  ['critical-speed', 'pace settles at a speed that can be held, with one reserve on top'],
  ['power-law', 'pace keeps fading with every doubling of the distance'],
]);

/** No comparison a person could read is longer. */
const MOST = 100;

/**
 * Lays estimates of one race side by side: ordered, every pair compared, and the goal placed against
 * each, before a goal is set by one of them. Nothing is averaged: methods that disagree take different things for
 * granted. Estimates come from {@link projectFromSet}, {@link projectBrokenSwim}, {@link timeFromCriticalSpeed},
 * {@link timeFromPowerLaw} and {@link impliedTime}.
 *
 * @param estimates - One to a hundred estimates of the same race; times in hundredths of a second.
 * @param goal - The goal time, in hundredths of a second, if there is one.
 * @returns The comparison; differences and overlaps in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for no estimate or more than a hundred, or for a range
 *   that does not run from fast to slow; `not-a-time`; `wrong-shape` where one is not an estimate.
 * @example
 * const races = [
 *   { distance: 200, time: parseTime('1:59.00') },
 *   { distance: 400, time: parseTime('4:10.00') },
 * ];
 * const settles = timeFromCriticalSpeed(fitCriticalSpeed(races), 1500);
 * const fades = timeFromPowerLaw(fitPowerLaw(races), 1500);
 * const { pairs } = compareEstimates([fades, settles]);
 * pairs.map(({ difference, ranges }) => [difference, ranges]); // => [[5919, 'overlap']]
 */
export function compareEstimates(estimates: readonly Estimate[], goal?: Hundredths): Comparison {
  const ordered = itemsOf(estimates, 'The estimates')
    .map((estimate, i) => estimateOf(estimate, `Estimate ${i + 1}`))
    .sort((a, b) => a.time - b.time);
  countOf(ordered.length, 'The number of estimates', 1, MOST);
  const wanted = goal === undefined ? null : timeOf(goal, 'The goal');
  const kinds = new Set(ordered.map(({ range }) => range?.covers));
  return {
    estimates: ordered,
    pairs: ordered.flatMap((fast, faster) =>
      ordered.slice(faster + 1).map((slow, i) => ({
        faster,
        slower: faster + 1 + i,
        ...pairOf(fast, slow),
      })),
    ),
    goal: wanted && ordered.map((estimate) => placeOf(wanted, estimate)),
    cautions: cautionsWhere([
      kinds.size > 1,
      'ranges-differ',
      'The ranges do not cover the same things; read what each one covers before comparing their widths.',
    ]),
  };
}

function pairOf(fast: Estimate, slow: Estimate): Omit<EstimatePair, 'faster' | 'slower'> {
  const difference = hundredths(slow.time - fast.time);
  const why =
    fast.method === slow.method
      ? `Both are ${fast.method} estimates, from other swims or another setting.`
      : `${premiseOf(fast)}; ${premiseOf(slow)}.`;
  if (fast.range === null || slow.range === null) {
    return { difference, ranges: 'unknown', overlap: null, why };
  }
  const low = greatestOf([fast.range.low, slow.range.low]);
  const high = leastOf([fast.range.high, slow.range.high]);
  return low <= high
    ? { difference, ranges: 'overlap', overlap: { low, high }, why }
    : { difference, ranges: 'apart', overlap: null, why };
}

function premiseOf({ method, assumptions }: Estimate): string {
  const own = assumptions[0]?.replace(/\.$/, '') ?? 'something it does not say';
  return `${method} takes for granted: ${PREMISES.get(method) ?? own}`;
}

function placeOf(goal: Hundredths, { time, range }: Estimate): GoalPlace {
  const difference = hundredths(goal - time);
  if (range === null) return { difference, place: 'unknown' };
  const place = goal < range.low ? 'faster' : goal > range.high ? 'slower' : 'within';
  return { difference, place };
}
