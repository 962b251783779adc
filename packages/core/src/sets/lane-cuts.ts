/** A sorted row of swimmers to be cut into groups, and what makes a group allowed and good. */
export interface Cutting {
  /** How many swimmers. */
  readonly count: number;
  /** For a group that ends before swimmer `end`: the first swimmer it may start at. Never falls. */
  readonly earliest: (end: number) => number;
  /** What the group from swimmer `start` up to but without swimmer `end` costs. */
  readonly cost: (start: number, end: number) => number;
}

/** Into how few groups the row can be cut. */
export function fewestGroups({ count, earliest }: Omit<Cutting, 'cost'>): number {
  let groups = 0;
  for (let end = count; end > 0; end = earliest(end)) groups++;
  return groups;
}

/**
 * Where each of exactly `groups` groups ends, so that their costs add up to the least possible: an
 * exact optimum. Of equally good cuts the one with the most even groups is taken (the least sum of
 * squared sizes), then the one whose last group is smallest, then whose last but one is, and so on.
 *
 * Every cost used obeys the quadrangle inequality: two groups that overlap cost no more than the one
 * that spans both and the one they share. So the best start of a last group never moves back as its
 * end moves on, nor as the groups before it become more: halving the ends halves the starts to try,
 * n log n steps a group.
 */
export function bestEnds({ count, earliest, cost }: Cutting, groups: number): readonly number[] {
  // A group ends late enough for the rest to fit into the groups left.
  const lows = [count];
  for (let left = groups - 1; left >= 0; left--) lows.push(Math.max(left, earliest(lows.at(-1)!)));
  lows.reverse();

  const rows: { low: number; starts: Int32Array }[] = [];
  let before = { cost: new Float64Array(count + 1), size: new Float64Array(count + 1) };
  let row = { cost: new Float64Array(count + 1), size: new Float64Array(count + 1) };
  let high = 0;
  for (let group = 1; group <= groups; group++) {
    const { cost: costs, size: sizes } = before;
    const above = rows.at(-1);
    const from = lows[group - 1]!;
    const to = high;
    // And early enough for each group left to get a swimmer.
    while (high < count - (groups - group) && earliest(high + 1) <= to) high++;
    const low = lows[group]!;
    const starts = new Int32Array(high - low + 1);
    const fill = (first: number, last: number, least: number, most: number): void => {
      if (first > last) return;
      const end = (first + last) >> 1;
      const stop = Math.max(least, earliest(end), above?.starts[end - above.low] ?? 0);
      let start = stop;
      let lowest = Infinity;
      let evenest = Infinity;
      for (let i = Math.min(most, end - 1); i >= stop; i--) {
        const total = costs[i]! + cost(i, end);
        if (total > lowest) continue;
        const size = sizes[i]! + (end - i) ** 2;
        if (total === lowest && size >= evenest) continue;
        start = i;
        lowest = total;
        evenest = size;
      }
      row.cost[end] = lowest;
      row.size[end] = evenest;
      starts[end - low] = start;
      fill(first, end - 1, least, start);
      fill(end + 1, last, start, most);
    };
    fill(low, high, from, to);
    rows.push({ low, starts });
    [before, row] = [row, before];
  }

  const ends = [count];
  for (const { low, starts } of rows.slice(1).reverse()) ends.push(starts[ends.at(-1)! - low]!);
  return ends.reverse();
}
