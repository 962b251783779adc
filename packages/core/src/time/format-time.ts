import { choiceOf, fieldsOf } from '../check.js';
import { differenceOf, type Hundredths, nearestHundredth } from './hundredths.js';

/** How {@link formatTime} writes a time. */
export interface FormatTimeOptions {
  /** Digits after the point: 0, 1 or 2 (a count); 2 unless given. Rounds a tie away from zero. */
  readonly decimals?: 0 | 1 | 2;
  /** Whether a difference above zero gets its plus sign; false unless given. */
  readonly signed?: boolean;
}

const two = (n: number): string => String(n).padStart(2, '0');

/**
 * Writes a time the way results are printed: `33.50`, `1:05.30`, `16:46.60`, `1:02:03.45`.
 *
 * What it writes with two decimals, {@link parseTime} reads back as the same time, below 1000 hours.
 * That is why a time from 1.00 to 9.99 s is written `0:05.30`: `5.30` alone could also be five and a
 * half minutes. A signed difference is never a clock time, so `+5.30` needs no such care. The minus
 * is a true one (−).
 *
 * @param t - A time or a difference, in hundredths of a second.
 * @param options - `decimals`: digits after the point, a count; `signed`: whether to write a plus.
 * @returns The time as text.
 * @throws {@link PacingError} `not-a-time`; `unknown-choice` for other decimals; `wrong-shape` where
 *   the options are not an object.
 * @example
 * formatTime(hundredths(100660)); // => '16:46.60'
 * @example
 * formatTime(hundredths(6530), { decimals: 1 }); // => '1:05.3'
 * @example
 * formatTime(hundredths(320), { signed: true }); // => '+3.20'
 */
export function formatTime(t: Hundredths, options: FormatTimeOptions = {}): string {
  const time = differenceOf(t, 'The time');
  const { decimals: wanted = 2, signed = false } = fieldsOf(options, 'The options');
  const decimals = choiceOf(wanted, [0, 1, 2], 'The decimals');

  const step = 10 ** (2 - decimals);
  const units = nearestHundredth(Math.abs(time) / step); // counts of a second, a tenth or a hundredth
  const perSecond = 10 ** decimals;
  const seconds = Math.floor(units / perSecond);
  const fraction = decimals === 0 ? '' : `.${String(units % perSecond).padStart(decimals, '0')}`;

  const sign = units === 0 ? '' : time < 0 ? '−' : signed ? '+' : '';
  const lone = decimals === 2 && sign === '' && seconds >= 1 && seconds < 10;
  return sign + clock(seconds, lone) + fraction;
}

function clock(total: number, withMinutes: boolean): string {
  const hours = Math.floor(total / 3600);
  const minutes = Math.floor(total / 60) % 60;
  const seconds = total % 60;
  if (hours > 0) return `${hours}:${two(minutes)}:${two(seconds)}`;
  if (minutes > 0 || withMinutes) return `${minutes}:${two(seconds)}`;
  return String(seconds);
}
