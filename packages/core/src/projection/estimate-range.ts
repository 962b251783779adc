import { nearestHundredth } from '../time/hundredths.js';
import type { TimeRange } from '../time/time-range.js';

/** A range out of two unrounded times, or null where an end is no time at all. */
export function rangeBetween(low: number, high: number, covers: string): TimeRange | null {
  if (!(low >= 0.5 && high < Number.MAX_SAFE_INTEGER)) return null;
  return { low: nearestHundredth(low), high: nearestHundredth(high), covers };
}
