import { snap } from '../../course/pool.js';
import { attempt } from '../../errors.js';
import type { Hundredths } from '../../time/hundredths.js';
import { finishOf, type Splits, splitsFromMarks } from '../splits.js';

/** A lap on its own, so that it can be judged, changed, cut in two or joined to the next. */
export interface Lap {
  /** In the pool's unit. */
  readonly distance: number;
  /** In hundredths of a second. */
  readonly time: number;
}

/** The laps of a checked swim, from mark to mark. */
export function lapList(swim: Splits): readonly Lap[] {
  const { marks } = swim;
  const every = finishOf(swim).distance / marks.length;
  // In a pool of 33⅓ the marks are snapped, so their differences are not all alike.
  const even = marks.every(({ distance }, i) => snap(every * (i + 1)) === distance);
  return marks.map((mark, i) => ({
    distance: even ? every : mark.distance - (marks[i - 1]?.distance ?? 0),
    time: mark.time - (marks[i - 1]?.time ?? 0),
  }));
}

/** The swim of these laps, or null where they make none: a lap of no time, a sum too large. */
export function swimOf(laps: readonly Lap[]): Splits | null {
  let distance = 0;
  let time = 0;
  const marks = laps.map((lap) => ({
    distance: (distance += lap.distance),
    time: (time += lap.time) as Hundredths, // checked by splitsFromMarks
  }));
  const swim = attempt(() => splitsFromMarks(marks));
  return swim.ok ? swim.value : null;
}

/** The laps with `count` of them, from the one at `k` on, replaced. */
export function replaced(
  laps: readonly Lap[],
  k: number,
  count: number,
  by: readonly Lap[],
): readonly Lap[] {
  return [...laps.slice(0, k), ...by, ...laps.slice(k + count)];
}

/** The greater of two over the smaller. */
export function ratioOf(a: number, b: number): number {
  return Math.max(a, b) / Math.min(a, b);
}
