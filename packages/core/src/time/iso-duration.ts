import { textOf } from '../check.js';
import { attempt, PacingError, type Result } from '../errors.js';
import { show } from '../show.js';
import { differenceOf, type Hundredths, hundredths, nearestHundredth } from './hundredths.js';

const NUMBER = '(\\d+(?:[.,]\\d+)?)';
const WHOLE = new RegExp(`^([+−-]?)PT(?:${NUMBER}H)?(?:${NUMBER}M)?(?:${NUMBER}S)?$`);
/** As far as a text can be read: the same, unfinished, a fraction only on the last part. */
const START =
  /^[+−-]?(?:P(?:T(?:\d+[.,]\d+H|(?:\d+H)?(?:\d+[.,]\d+M|(?:\d+M)?(?:\d+(?:[.,]\d+)?S|\d+[.,]?\d*)?)?)?)?)?/;
const LONGEST = 64; // characters; keeps a pasted novel cheap

/**
 * Writes a time as an ISO 8601 duration, for other programs: `PT1M5.3S`. People read {@link formatTime}.
 *
 * @param t - A time or a difference, in hundredths of a second.
 * @returns The duration: hours, minutes and seconds, the fraction on the seconds.
 * @throws {@link PacingError} `not-a-time`.
 * @example
 * formatIsoDuration(hundredths(100660)); // => 'PT16M46.6S'
 * @see ISO 8601-1:2019, durations (from memory); a leading minus is ISO 8601-2:2019 (from memory).
 */
export function formatIsoDuration(t: Hundredths): string {
  const time = differenceOf(t, 'The time');
  const total = Math.abs(time);
  const hours = Math.floor(total / 360_000);
  const minutes = Math.floor(total / 6_000) % 60;
  const seconds = (total % 6_000) / 100;
  const parts = [hours && `${hours}H`, minutes && `${minutes}M`, seconds && `${seconds}S`];
  return `${time < 0 ? '-' : ''}PT${parts.filter(Boolean).join('') || '0S'}`;
}

/**
 * Reads an ISO 8601 duration of hours, minutes and seconds, as other programs and {@link formatIsoDuration}
 * write it; a fraction, with point or comma, may stand on the last of them.
 *
 * @param text - The duration, such as `PT16M46.6S`.
 * @returns The time in hundredths of a second, to the nearest.
 * @throws {@link PacingError} `time-unreadable`, with the position of the first character that could
 *   not be read; `too-large`; `wrong-shape` where it is not text.
 * @example
 * parseIsoDuration('PT1H2M3,45S'); // => 372345
 * @see ISO 8601-1:2019, durations (from memory).
 */
export function parseIsoDuration(text: string): Hundredths {
  const written = textOf(text, 'A duration').slice(0, LONGEST + 1);
  const [, sign = '', hours, minutes, seconds] = WHOLE.exec(written) ?? [];
  const given = [hours, minutes, seconds].filter((part) => part !== undefined);
  const broken = given.slice(0, -1).some((part) => /[.,]/.test(part)); // PT1.5H3M
  if (given.length === 0 || broken || written.length > LONGEST) {
    const message = `${show(text)} is no duration of hours, minutes and seconds; write one like PT16M46.6S.`;
    const [read = ''] = START.exec(written) ?? [];
    throw new PacingError('time-unreadable', message, text, Math.min(read.length, LONGEST));
  }
  const total = nearestHundredth(
    inHundredths(hours, 360_000) + inHundredths(minutes, 6_000) + inHundredths(seconds, 100),
  );
  return sign === '' || sign === '+' ? total : hundredths(-total);
}

/** The digits as one whole number, multiplied, then divided once: a written tie stays a tie. */
function inHundredths(number = '0', unit: number): number {
  const [whole = '', fraction = ''] = number.split(/[.,]/);
  return (Number(whole + fraction) * unit) / 10 ** fraction.length;
}

/**
 * {@link parseIsoDuration}, handing back its error instead of throwing it.
 *
 * @param text - The duration, such as `PT16M46.6S`.
 * @returns `{ ok: true, value }` with the time in hundredths of a second, or `{ ok: false, error }`.
 * @throws {@link PacingError} never: the error is in the result.
 * @example
 * safeParseIsoDuration('PT33.5S'); // => { ok: true, value: 3350 }
 */
export function safeParseIsoDuration(text: string): Result<Hundredths> {
  return attempt(() => parseIsoDuration(text));
}
