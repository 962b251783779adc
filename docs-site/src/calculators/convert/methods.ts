import {
  type Conversion,
  convertTime,
  isPacingError,
  type Pool,
  type SwimToConvert,
} from 'backhalf';
import { type Gain, gainText } from './gains';

/** One way to convert a swim, and what it gives. */
export interface Method {
  readonly name: string;
  /** How it is said after the figure: `by turns at 0.80 s`. */
  readonly words: string;
  readonly conversion: Conversion;
  /** By turns only. */
  readonly gain: Gain | null;
  readonly source: string;
}

/** The table published for these two pools and this event, where there is one. */
export function byTable(swim: SwimToConvert, to: Pool): Method | null {
  try {
    const conversion = convertTime(swim, to);
    const season = conversion.method.replace('collegiate-', '').replace('-', '–');
    const name = `Collegiate ${season}`;
    const words = `by the collegiate table of ${season}`;
    return { name, words, conversion, gain: null, source: conversion.source };
  } catch (error) {
    if (isPacingError(error) && error.code === 'no-published-factor') return null;
    throw error;
  }
}

export function byTurns(swim: SwimToConvert, to: Pool, gain: Gain): Method {
  const { gainPerTurn, yardRatio, source, name } = gain;
  const options = { gainPerTurn, ...(yardRatio !== undefined && { yardRatio }) };
  const conversion = convertTime(swim, to, { method: 'turns', ...options });
  return {
    name,
    words: `by turns at ${gainText(gainPerTurn)}`,
    conversion,
    gain,
    source,
  };
}

/** How a method came to its figure, in a sentence or two. */
export function workingOf({ name, conversion, gain }: Method): string {
  const { factor, wayBack, turnsFewer = 0 } = conversion;
  const fewer = wayBack ? -turnsFewer : turnsFewer;
  const count = Math.abs(fewer);
  const turns =
    gain && count > 0
      ? ` ${fewer < 0 ? '−' : '+'} ${gainText(gain.gainPerTurn)} × ${count} turn${count === 1 ? '' : 's'} ${fewer < 0 ? 'more' : 'fewer'}`
      : '';
  const rule =
    gain === null
      ? `metre time × ${factor}, and what is beyond the hundredths is dropped`
      : `${wayBack ? 'yard time' : 'time'} × ${Number(factor.toFixed(6))}${turns}, rounded once`;
  const back = wayBack
    ? ' Asked the other way round, it gives the slowest time that still converts to the one given, or better.'
    : '';
  return `${name}: ${rule}.${back}`;
}
