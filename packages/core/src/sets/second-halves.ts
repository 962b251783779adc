import { type Halves, halvesIfMarked } from '../splits/halves.js';
import { meanOf, sumOf } from '../statistics.js';
import { type Hundredths, nearestHundredth } from '../time/hundredths.js';
import type { SwumSet } from './swum-set.js';

/** The halves of each rep, in order; null for a rep that nothing marks before halfway. */
export function halvesOfReps(set: SwumSet): readonly (Halves | null)[] {
  return set.reps.map(halvesIfMarked);
}

/** Only the halves that are there. */
export function markedHalves(set: SwumSet): readonly Halves[] {
  return halvesOfReps(set).filter((halves) => halves !== null);
}

/** Mean first and mean second half, each rounded once; null where no rep has halves. */
export function meanHalves(halves: readonly Halves[]): Halves | null {
  if (halves.length === 0) return null;
  return {
    first: nearestHundredth(meanOf(halves.map(({ first }) => first))),
    second: nearestHundredth(meanOf(halves.map(({ second }) => second))),
    interpolated: halves.some(({ interpolated }) => interpolated),
  };
}

/** A distance at twice the mean second half, rounded once; null where no rep has halves. */
export function honestTime(
  set: SwumSet,
  halves: readonly Halves[],
  distance: number,
): Hundredths | null {
  if (halves.length === 0) return null;
  const seconds = sumOf(halves.map(({ second }) => second));
  return nearestHundredth((2 * seconds * distance) / (halves.length * set.repDistance));
}
