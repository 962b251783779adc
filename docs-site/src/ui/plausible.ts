import { fromSeconds, type TimeWindow } from 'backhalf';

/**
 * The times in which a person could swim a distance, from beyond any record to a slow drill. It only
 * sorts readings of what was typed (`3350` for a 50 is no half-hour); it refuses nothing.
 */
export function plausibleTimes(distance: number): TimeWindow {
  return { from: fromSeconds(distance / 3), to: fromSeconds(distance * 4) };
}
