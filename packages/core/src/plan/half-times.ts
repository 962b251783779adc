import { PacingError } from '../errors.js';
import { formatTime } from '../time/format-time.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';

/** No swim is planned in halves that differ by more; a half's own time, given in error, is about one half. */
const MOST_OF_WHOLE = 1 / 4;

/** Refuses a half's own time where the difference of the halves (second less first) is meant. */
export function checkDifference(secondHalf: Hundredths, whole: number): void {
  if (Math.abs(secondHalf) <= MOST_OF_WHOLE * whole) return;
  const message = `The second half is told by its difference from the first, not by its own time; ${formatTime(secondHalf, { signed: true })} is more than a quarter of the whole, so give how much slower it is, or below zero how much faster.`;
  throw new PacingError('out-of-range', message, secondHalf);
}

/**
 * A time in two halves that differ by `secondHalf` (second less first). Where the hundredths do not
 * halve, the first half takes the odd one, and the difference is a hundredth less than asked.
 */
export function halfTimes(
  time: number,
  secondHalf: number,
): { readonly first: Hundredths; readonly second: Hundredths } {
  const first = hundredths(Math.ceil((time - secondHalf) / 2));
  return { first, second: hundredths(time - first) };
}
