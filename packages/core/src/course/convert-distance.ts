import { choiceOf, numberOf } from '../check.js';
import type { Unit } from './pool.js';

/**
 * A distance in metres as yards, or the other way: to see how far a race really is. One yard is exactly 0.9144 m, kept as the ratio 1143 : 1250.
 *
 * It says nothing of times; those are converted by {@link convertTime}.
 *
 * @param distance - A distance in the unit `from`, in metres or yards.
 * @param from - The unit it is in, `m` or `yd`.
 * @param to - The unit it is wanted in, `m` or `yd`.
 * @returns The distance in the unit `to`, in metres or yards.
 * @throws {@link PacingError} `out-of-range` where it is no number up to a million million either way;
 *   `unknown-choice` for another unit.
 * @example
 * convertDistance(1650, 'yd', 'm'); // => 1508.76
 * @see International yard and pound agreement of 1959: 1 yd = 0.9144 m.
 */
export function convertDistance(distance: number, from: Unit, to: Unit): number {
  const given = numberOf(distance, 'The distance', { min: -1e12, max: 1e12 });
  const units: readonly Unit[] = ['m', 'yd'];
  const source = choiceOf(from, units, 'The unit');
  const target = choiceOf(to, units, 'The unit');
  if (source === target) return given;
  return target === 'm' ? (given * 1143) / 1250 : (given * 1250) / 1143;
}
