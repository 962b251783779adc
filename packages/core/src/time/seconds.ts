import { numberOf } from '../check.js';
import { differenceOf, type Hundredths, nearestHundredth } from './hundredths.js';

/**
 * Takes seconds as a time: to the nearest hundredth, a tie away from zero. For rests and tolerances in
 * code, and for data kept in seconds; what a person typed goes through {@link parseTime}.
 *
 * @param s - Seconds; below zero for a difference.
 * @returns The time in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` where it is no finite number, `too-large` where it is
 *   too large to be exact.
 * @example
 * fromSeconds(65.3); // => 6530
 * @example
 * fromSeconds(-3); // => -300
 */
export function fromSeconds(s: number): Hundredths {
  const seconds = numberOf(s, 'Seconds');
  // 1.005 is stored a hair below itself. The shortest decimal that names the number is what was
  // meant, so the decimal point is moved in the text, and a written tie stays a tie.
  const [digits, exponent = '0'] = String(seconds).split('e');
  return nearestHundredth(Number(`${digits}e${Number(exponent) + 2}`));
}

/**
 * A time in seconds, for a chart or a program that keeps seconds. To show one to a person, use
 * {@link formatTime}.
 *
 * @param t - A time in hundredths of a second.
 * @returns The time in seconds.
 * @throws {@link PacingError} `not-a-time` where it is no whole number of hundredths.
 * @example
 * toSeconds(hundredths(6530)); // => 65.3
 */
export function toSeconds(t: Hundredths): number {
  return differenceOf(t, 'The time') / 100;
}
