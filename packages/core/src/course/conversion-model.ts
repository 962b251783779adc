import { PacingError } from '../errors.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import type { Pool } from './pool.js';

/** One end of a conversion: a pool, and the distance swum in it. */
export interface Side {
  readonly pool: Pool;
  readonly distance: number;
}

/**
 * A method between two pools. In its own direction it is `floor((times · t + plus) / over)`, in whole
 * numbers only: `plus` 0 drops the third decimal, half of `over` rounds it.
 */
export interface ConversionModel {
  readonly times: bigint;
  readonly plus: bigint;
  readonly over: bigint;
  /** Whether it is asked for against its own direction. */
  readonly wayBack: boolean;
  /** What it multiplies by in its own direction, a ratio. */
  readonly factor: number;
  /** By turns only: how many turns fewer the converted swim has, a count. */
  readonly turnsFewer?: number;
  readonly source: string;
}

/** The converted time: on the way back the slowest time that still converts to it, or better. */
export function convertedTime(model: ConversionModel, time: Hundredths): Hundredths {
  const { times, plus, over, wayBack } = model;
  const given = BigInt(time);
  // floor(x / over) ≤ given says x < over · (given + 1): the greatest whole x is one less.
  const converted = wayBack
    ? (over * (given + 1n) - 1n - plus) / times
    : (times * given + plus) / over;
  if (converted > 0n) return hundredths(Number(converted));
  const message = 'Nothing is left of so short a time once it is converted; use a longer one.';
  throw new PacingError('out-of-range', message, time);
}
