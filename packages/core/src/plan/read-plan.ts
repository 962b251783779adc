import { fieldsOf } from '../check.js';
import { type Pool, poolOf } from '../course/pool.js';
import type { Halves } from '../splits/halves.js';
import { type Mark, splitsOf } from '../splits/splits.js';
import { timeOf } from '../time/hundredths.js';

/** What a race plan is read by. */
export interface ReadPlan {
  readonly pool: Pool;
  readonly marks: readonly Mark[];
  readonly halves: Halves | null;
  readonly checkpoints: readonly Mark[];
}

/** A race plan out of plain data, checked again: it may have come from JSON. */
export function planOf(value: unknown): ReadPlan {
  const { pool, marks, halves, checkpoints } = fieldsOf(value, 'The plan');
  return {
    pool: poolOf(pool),
    marks: splitsOf({ marks }, 'The plan').marks,
    halves: halves === null ? null : halvesIn(halves),
    checkpoints: splitsOf({ marks: checkpoints }, 'The checkpoints').marks,
  };
}

function halvesIn(value: unknown): Halves {
  const { first, second, interpolated } = fieldsOf(value, "The plan's halves");
  return {
    first: timeOf(first, 'The first half'),
    second: timeOf(second, 'The second half'),
    interpolated: interpolated === true,
  };
}
