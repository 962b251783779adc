import { numberOf } from '../check.js';
import { PacingError } from '../errors.js';
import { differenceOf, type Hundredths } from '../time/hundredths.js';
import type { ConversionModel, Side } from './conversion-model.js';
import { lengthsIn } from './pool.js';

/** What a conversion by turns is told; see {@link convertTime} and {@link convertPace}. */
export interface TurnOptions {
  /**
   * What one turn gains over swimming the same stretch, in hundredths of a second, from 0. Never
   * guessed: choose one of {@link TURN_GAINS}, or the swimmer's own.
   */
  readonly gainPerTurn: Hundredths;
  /**
   * Time for a metre over time for a yard, a ratio; exactly 1250/1143 unless given. Handbooks print
   * 1.1 or 1.11.
   */
  readonly yardRatio?: number;
}

const micro = (n: number): bigint => BigInt(Math.round(n * 1e6));

/**
 * By turns: time there = time here × ratio of the distances + gain × turns fewer there, rounded once.
 * Its own direction is yards to metres; between equal units it is exact both ways. Turns are lengths
 * less one, counted for the metre event's number in both pools, as handbooks do: a 400 m takes 7 in a
 * 50 m pool, and its pair, the 500 yd, counts as the 15 of a 400 in a 25 yd pool.
 */
export function turnModel(from: Side, to: Side, options: Record<string, unknown>): ConversionModel {
  const gain = gainOf(options['gainPerTurn']);
  const wayBack = from.pool.unit === 'm' && to.pool.unit === 'yd';
  const [here, there] = wayBack ? [to, from] : [from, to];

  const [top, bottom] =
    here.pool.unit === there.pool.unit ? [1n, 1n] : yardRatioOf(options['yardRatio']);
  const times = top * micro(there.distance);
  const over = bottom * micro(here.distance);

  const fewer = lengthsIn(here.pool, there.distance) - lengthsIn(there.pool, there.distance);
  // Doubled, so that half a hundredth, the rounding, is a whole number too.
  const plus = over + 2n * over * BigInt(gain) * BigInt(fewer);
  return {
    times: 2n * times,
    plus,
    over: 2n * over,
    wayBack,
    factor: Number(times) / Number(over),
    turnsFewer: wayBack && fewer !== 0 ? -fewer : fewer,
    source: 'The ratio of the distances, and the gain per turn that was given.',
  };
}

function gainOf(value: unknown): Hundredths {
  const message =
    'Converting by turns needs the gain per turn; choose a published one or the swimmer’s own.';
  if (value === undefined) throw new PacingError('gain-missing', message, value);
  const gain = differenceOf(value, 'The gain per turn');
  numberOf(gain, 'The gain per turn', { min: 0 });
  return gain;
}

function yardRatioOf(value: unknown): readonly [bigint, bigint] {
  if (value === undefined) return [1250n, 1143n];
  return [micro(numberOf(value, 'The yard ratio', { min: 1, max: 1.3 })), 1_000_000n];
}
