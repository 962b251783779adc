import { textOf } from '../check.js';
import { attempt, PacingError, type Result } from '../errors.js';
import { show } from '../show.js';
import { differenceOf, type Hundredths, nearestHundredth } from './hundredths.js';
import { fromSeconds } from './seconds.js';

/**
 * Writes a time as an ISO 8601 duration, for programs.
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
 * Reads an ISO 8601 duration of hours, minutes and seconds; a fraction, with point or comma, may
 * stand on the last of them.
 *
 * @param text - The duration, such as `PT16M46.6S`.
 * @returns The time in hundredths of a second, to the nearest.
 * @throws {@link PacingError} `time-unreadable`; `too-large`; `wrong-shape` where it is no text.
 * @example
 * parseIsoDuration('PT1H2M3,45S'); // => 372345
 * @see ISO 8601-1:2019, durations (from memory).
 */
export function parseIsoDuration(text: string): Hundredths {
  const digits = '(\\d+(?:[.,]\\d+)?)';
  const form = new RegExp(`^([+−-]?)PT(?:${digits}H)?(?:${digits}M)?(?:${digits}S)?$`);
  const whole = textOf(text, 'A duration');
  const parts = whole.length > 64 ? null : form.exec(whole);
  const given = parts?.slice(2).filter((part) => part !== undefined) ?? [];
  if (parts === null || given.length === 0 || given.slice(0, -1).some((n) => /[.,]/.test(n))) {
    const message = `${show(whole)} is no duration of hours, minutes and seconds; write one like PT16M46.6S.`;
    throw new PacingError('time-unreadable', message, text, 0);
  }
  const [hours, minutes, seconds] = parts.slice(2).map((n) => Number((n ?? '0').replace(',', '.')));
  const total = nearestHundredth(
    (hours ?? 0) * 360_000 + (minutes ?? 0) * 6_000 + fromSeconds(seconds ?? 0),
  );
  return parts[1] === '' || parts[1] === '+' ? total : nearestHundredth(-total);
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
