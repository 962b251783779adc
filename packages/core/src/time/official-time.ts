import { itemsOf } from '../check.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths, timeOf } from './hundredths.js';

/**
 * The official time from one, two or three stopwatches on one swimmer, where a swim is timed by hand.
 *
 * Three watches: the time two of them agree on, else the middle one; either way the middle of the
 * three. Two: their mean, its third decimal dropped, since timing rules never use one (the rule does
 * not say how the mean is rounded). One: taken as it stands, which is common practice; the rule is
 * silent on it.
 *
 * @param watches - One to three watch times, in hundredths of a second, in any order.
 * @returns The official time in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for no watch or more than three; `not-a-time`;
 *   `wrong-shape` where it is not a list.
 * @example
 * officialTime([6730, 6712, 6715].map(hundredths)); // => 6715
 * @example
 * officialTime([3178, 3167].map(hundredths)); // => 3172
 * @see World Aquatics swimming rules, SW 11.2 and SW 11.3.1 to 11.3.3.
 */
export function officialTime(watches: readonly Hundredths[]): Hundredths {
  const times = itemsOf(watches, 'The watches').map((watch, i) => timeOf(watch, `Watch ${i + 1}`));
  const [a, b, c] = times.sort((x, y) => x - y);
  if (a === undefined || times.length > 3) {
    const message = `An official time takes one to three watches, not ${times.length}.`;
    throw new PacingError('out-of-range', message, watches);
  }
  if (b === undefined) return a;
  return c === undefined ? hundredths(a + Math.floor((b - a) / 2)) : b;
}
