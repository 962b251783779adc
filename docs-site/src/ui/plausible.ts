import { fromSeconds, type TimeWindow } from 'backhalf';

/**
 * The times in which a person could swim a distance, from beyond any record to a slow drill. It only
 * sorts readings of what was typed (`3350` for a 50 is no half-hour); it refuses nothing.
 */
export function plausibleTimes(distance: number): TimeWindow {
  // What stands in a field may be no distance yet, or an absurd one.
  const some = Math.min(Math.max(distance || 0, 1), 1e6);
  return { from: fromSeconds(some / 3), to: fromSeconds(some * 4) };
}
