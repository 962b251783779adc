import type { Pool } from './pool.js';

/** Whether two pools have the same length in the same unit. */
export function samePool(a: Pool, b: Pool): boolean {
  return a.length === b.length && a.unit === b.unit;
}
