import { type Lap, ratioOf } from './lap-list.js';
import { paceOf } from './usual-lap.js';

/**
 * Whether laps `k` and `k + 1`, counted from 0, are each like the next but one: water that runs, or odd
 * and even laps swum in different ways. That is no slip, however far the two are apart.
 */
export function alternates(laps: readonly Lap[], k: number): boolean {
  // The first lap is read with a dive, and more narrowly without.
  return isAlike(laps, k, 0.03) || isAlike(laps, k, 0.015, 0);
}

function isAlike(laps: readonly Lap[], k: number, within: number, dive?: number): boolean {
  const alike = (i: number, j: number): boolean =>
    laps[j] !== undefined && ratioOf(paceOf(laps, i, dive), paceOf(laps, j, dive)) < 1 + within;
  return (alike(k, k + 2) || alike(k, k - 2)) && (alike(k + 1, k - 1) || alike(k + 1, k + 3));
}
