import { formatTime, type Hundredths } from 'backhalf';

/** A ratio less one as a signed percentage with one decimal and a true minus: `+0.3`. */
export function signedPercent(ratio: number): string {
  const size = (Math.abs(ratio) * 100).toFixed(1);
  if (Number(size) === 0) return size;
  return `${ratio < 0 ? '−' : '+'}${size}`;
}

/** A difference in words and figure: `3.20 slower`, `0.45 faster`, `level`. */
export function slowerOrFaster(difference: Hundredths): string {
  if (difference === 0) return 'level';
  return `${gapText(difference)} ${difference < 0 ? 'faster' : 'slower'}`;
}

/** The size of a difference, without its sign: `3.20`. */
export const gapText = (difference: Hundredths): string =>
  formatTime(difference, { signed: true }).replace(/^[+−]/, '');

/** A distance as it is said: no more decimals than an odd pool needs. */
export const distanceText = (distance: number): string => String(Math.round(distance * 100) / 100);

/** A number with one decimal and a true minus; a plus before what is above zero unless told otherwise. */
export function signedNumber(value: number, plus = true): string {
  const size = Math.abs(value).toFixed(1);
  if (Number(size) === 0) return size;
  return `${value < 0 ? '−' : plus ? '+' : ''}${size}`;
}

/** A time as a pace clock tells it, hundredths only where there are any: `1:30`, `1:07.50`. */
export const clockText = (time: Hundredths | null): string =>
  time === null ? 'not known' : formatTime(time, { decimals: time % 100 === 0 ? 0 : 2 });
