import type { Pool } from 'backhalf';
import { distanceText } from './wording';

/** A count of lengths as an option of a list, with the distance it is once the pool is known. */
export function lengthsOption(lengths: number, pool: Pool | null) {
  const counted = lengths === 1 ? '1 length' : `${lengths} lengths`;
  const distance = pool && `${distanceText(pool.length * lengths)} ${pool.unit}`;
  return { value: String(lengths), label: distance ? `${distance} (${counted})` : counted };
}
