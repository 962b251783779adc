import { choiceOf, countOf, fieldsOf, numberOf } from '../check.js';
import { PacingError } from '../errors.js';

/** Metres or yards. */
export type Unit = 'm' | 'yd';

/**
 * A pool. {@link SCY}, {@link SCM} and {@link LCM} are ready made; any other is one literal away, such as
 * `{ length: 20, unit: 'yd' }` (with `as const` where it is kept in a variable).
 */
export interface Pool {
  /** One length of the pool, in the pool's unit. */
  readonly length: number;
  /** The pool's unit; every distance swum in it is in that unit. */
  readonly unit: Unit;
}

/** The short-course yards pool: 25 yd. */
export const SCY: Pool = Object.freeze({ length: 25, unit: 'yd' });
/** The short-course metres pool: 25 m. */
export const SCM: Pool = Object.freeze({ length: 25, unit: 'm' });
/** The long-course metres pool: 50 m. */
export const LCM: Pool = Object.freeze({ length: 50, unit: 'm' });

/** A pool out of plain data. */
export function poolOf(value: unknown, what = 'The pool'): Pool {
  const { length, unit } = fieldsOf(value, what);
  return {
    length: numberOf(length, `${what}'s length`, { min: 1, max: 10_000 }),
    unit: choiceOf(unit, ['m', 'yd'], `${what}'s unit`),
  };
}

const FARTHEST = 1e9; // no swim is longer, in metres or yards; keeps sums of distances exact enough

/** A distance swum, above zero, to a micrometre. */
export function distanceOf(value: unknown, what: string): number {
  const distance = typeof value === 'number' ? snap(value) : value;
  return numberOf(distance, what, { above: 0, max: FARTHEST });
}

/**
 * Snaps a distance to a micrometre, so that 15 lengths of 33⅓ are 500 and not a hair more, however
 * the sum was made.
 */
export function snap(distance: number): number {
  const snapped = Math.round(distance * 1e6) / 1e6;
  return Number.isFinite(snapped) ? snapped : distance;
}

/**
 * Whether two distances are one place. Both were rounded to a micrometre, perhaps by different roads
 * (a third of 100, and half of two thirds of it), so they may lie one apart.
 */
export function samePlace(a: number, b: number): boolean {
  return Math.abs(a - b) < 1.5e-6;
}

/**
 * The distance of a number of lengths, for pools whose lengths are no round number. The way back is
 * {@link lengthsIn}.
 *
 * @param pool - The pool.
 * @param lengths - How many lengths, a count from 0.
 * @returns The distance in the pool's unit, to a micrometre.
 * @throws {@link PacingError} `wrong-shape` or `unknown-choice` where it is not a pool,
 *   `out-of-range` where the lengths are no whole number.
 * @example
 * distanceAt({ length: 100 / 3, unit: 'm' }, 15); // => 500
 */
export function distanceAt(pool: Pool, lengths: number): number {
  return snap(poolOf(pool).length * countOf(lengths, 'The number of lengths', 0));
}

/**
 * How many lengths of a pool a distance is: what a swimmer counts, and whether a race or rep ends at a wall
 * at all.
 *
 * @param pool - The pool.
 * @param distance - A distance in the pool's unit.
 * @returns The number of lengths, a count from 1.
 * @throws {@link PacingError} `not-whole-lengths` where it ends between the walls; `wrong-shape`,
 *   `unknown-choice` or `out-of-range` where pool or distance is not one.
 * @example
 * lengthsIn(SCY, 1650); // => 66
 * @example
 * lengthsIn({ length: 100 / 3, unit: 'm' }, 400); // => 12
 */
export function lengthsIn(pool: Pool, distance: number): number {
  const { length, unit } = poolOf(pool);
  const wanted = distanceOf(distance, 'The distance');
  const lengths = Math.round(wanted / length);
  if (lengths > 0 && samePlace(lengths * length, wanted)) return lengths;

  const below = snap(Math.floor(wanted / length) * length);
  const above = snap(Math.ceil(wanted / length) * length);
  const would = below > 0 ? `${below} or ${above}` : `${above}`;
  const message = `${wanted} ${unit} is no whole number of lengths of a ${snap(length)} ${unit} pool; choose ${would}.`;
  throw new PacingError('not-whole-lengths', message, distance);
}
