import { type Hundredths, hundredths } from '../time/hundredths.js';

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
