import { PacingError } from '../errors.js';
import { show } from '../show.js';

/**
 * A time, or a difference of two times, as a whole number of hundredths of a second. Official
 * timing has that resolution, and whole numbers add up exactly. Make one with {@link hundredths},
 * {@link fromSeconds} or {@link parseTime}.
 */
export type Hundredths = number & { readonly '~unit': 'hundredths' };

/**
 * Takes a number that is already in hundredths of a second as a time: from a file, a timing system or
 * another program.
 *
 * Seconds are read by {@link fromSeconds}, text by {@link parseTime}: `hundredths(65)` is 0.65 s.
 *
 * @param n - A whole number of hundredths of a second; below zero for a difference.
 * @returns The same number, branded as hundredths.
 * @throws {@link PacingError} `not-a-time` where it is no whole number, `too-large` where it is too
 *   large to be exact.
 * @example
 * formatTime(hundredths(6530)); // => '1:05.30'
 * @example
 * const laps = [3150, 3350].map(hundredths);
 * splitsFromLaps(50, laps).marks.at(-1); // => { distance: 100, time: 6500 }
 */
export function hundredths(n: number): Hundredths {
  if (Number.isSafeInteger(n)) return (n === 0 ? 0 : n) as Hundredths; // turns -0 into 0
  if (Number.isInteger(n) || n === Infinity || n === -Infinity) {
    throw new PacingError(
      'too-large',
      'A time this large is no longer exact; use a smaller one.',
      n,
    );
  }
  const message = `A time must be a whole number of hundredths of a second, not ${show(n)}.`;
  throw new PacingError('not-a-time', message, n);
}

/**
 * Rounds to whole hundredths, a tie away from zero, so that swapping two swims flips the sign of
 * their difference and changes nothing else.
 */
export function nearestHundredth(n: number): Hundredths {
  return hundredths(n < 0 ? -Math.round(-n) : Math.round(n));
}

/** A time above zero out of plain data; `what` starts the sentence: "Lap 3". */
export function timeOf(value: unknown, what: string): Hundredths {
  if (Number.isSafeInteger(value) && (value as number) > 0) return value as Hundredths;
  const message = `${what} must be a whole number of hundredths of a second above zero, not ${show(value)}.`;
  throw new PacingError('not-a-time', message, value);
}

/** A signed difference of times out of plain data. */
export function differenceOf(value: unknown, what: string): Hundredths {
  if (Number.isSafeInteger(value)) return hundredths(value as number);
  const message = `${what} must be a whole number of hundredths of a second, not ${show(value)}.`;
  throw new PacingError('not-a-time', message, value);
}
