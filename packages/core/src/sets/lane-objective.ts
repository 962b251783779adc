import { greatestOf, sumOf } from '../statistics.js';
import { bestEnds, type Cutting, fewestGroups } from './lane-cuts.js';

/**
 * What a grouping of lanes keeps least; they disagree, so it is stated.
 *
 * - `largest-spread`: the spread of the worst lane, from its fastest to its slowest pace.
 * - `sum-of-spreads`: the spreads of all lanes added.
 * - `total-wait`: what all swimmers together wait for the slowest of their lane.
 * - `least-squares`: squared distances from the mean pace of the lane, added.
 */
export type LaneObjective = 'largest-spread' | 'sum-of-spreads' | 'total-wait' | 'least-squares';

/** All of them. */
export const OBJECTIVES: readonly LaneObjective[] = [
  'largest-spread',
  'sum-of-spreads',
  'total-wait',
  'least-squares',
];

/** The best groups of paces from fast to slow: where each ends, and the least value they reach. */
export function bestGroups(
  paces: readonly number[],
  limits: { readonly groups: number; readonly most: number },
  objective: LaneObjective,
): { readonly ends: readonly number[]; readonly cost: number } {
  const count = paces.length;
  const within = (spread: number) => earliestWithin(paces, limits.most, spread);
  const worst = objective === 'largest-spread';
  const cost = costOf(paces, worst ? 'sum-of-spreads' : objective);
  const cutting = { count, earliest: within(Infinity), cost };
  const ends = bestEnds(worst ? withinLeastSpread() : cutting, limits.groups);
  const costs = ends.map((end, i) => cost(ends[i - 1] ?? 0, end));
  return { ends, cost: worst ? greatestOf(costs) : sumOf(costs) };

  /** Within the least spread that fits, every grouping is as good: the most even one is taken. */
  function withinLeastSpread(): Cutting {
    const fits = (spread: number) =>
      fewestGroups({ count, earliest: within(spread) }) <= limits.groups;
    const least = leastThat(fits, paces[count - 1]! - paces[0]!);
    return { count, earliest: within(least), cost: () => 0 };
  }
}

/** The first swimmer of a group that holds at most `most` and spreads over at most `spread`. */
function earliestWithin(paces: readonly number[], most: number, spread: number) {
  const starts = new Int32Array(paces.length + 1);
  let start = 0;
  paces.forEach((pace, i) => {
    start = Math.max(start, i + 1 - most);
    while (pace - paces[start]! > spread) start++;
    starts[i + 1] = start;
  });
  return (end: number): number => starts[end]!;
}

/** The least whole number up to `high` that passes, where all above it pass too. */
function leastThat(passes: (n: number) => boolean, high: number): number {
  let low = 0;
  let top = high;
  while (low < top) {
    const middle = low + Math.floor((top - low) / 2);
    if (passes(middle)) top = middle;
    else low = middle + 1;
  }
  return top;
}

/** The cost of one group, in constant time: sums are taken once, from the fastest pace. */
function costOf(paces: readonly number[], objective: LaneObjective): Cutting['cost'] {
  const behind = paces.map((pace) => pace - paces[0]!);
  const sums = runningTotals(behind);
  const squares = runningTotals(behind.map((pace) => pace ** 2));
  if (objective === 'sum-of-spreads') {
    return (start, end) => behind[end - 1]! - behind[start]!;
  }
  const sumOver = (start: number, end: number) => sums[end]! - sums[start]!;
  if (objective === 'total-wait') {
    return (start, end) => (end - start) * behind[end - 1]! - sumOver(start, end);
  }
  return (start, end) => squares[end]! - squares[start]! - sumOver(start, end) ** 2 / (end - start);
}

function runningTotals(values: readonly number[]): Float64Array {
  const totals = new Float64Array(values.length + 1);
  values.forEach((value, i) => {
    totals[i + 1] = totals[i]! + value;
  });
  return totals;
}
