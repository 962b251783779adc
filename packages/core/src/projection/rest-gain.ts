import { numberOf } from '../check.js';
import { PacingError } from '../errors.js';
import { differenceOf, type Hundredths } from '../time/hundredths.js';

// Olbrecht et al. 1985, Int. J. Sports Med. 6(2), abstract: 59 national-level men; with 10 s rest, how
// much faster reps were swum than a continuous swim at the same lactate, as a ratio.
const GAINS = [
  { distance: 50, gain: 0.1123 },
  { distance: 100, gain: 0.0421 },
  { distance: 200, gain: 0.0295 },
  { distance: 400, gain: 0.0202 },
] as const;
const REST = 1000; // hundredths

/** How much faster reps on 10 s rest are than a continuous swim at the same lactate; see {@link restGain}. */
export interface RestGain {
  /** The gain in speed, a ratio: 0.0421 is 4.21 % faster. */
  readonly gain: number;
  /** From the smallest to the largest gain measured around this distance: ratios. */
  readonly between: {
    /** The smaller, a ratio. */
    readonly least: number;
    /** The larger, a ratio. */
    readonly most: number;
  };
  /** Whether the distance lies between two measured ones, so that a curve of ours was read. */
  readonly interpolated: boolean;
}

/**
 * What 10 s of rest are worth: how much faster one swims reps than a continuous swim at the same lactate.
 *
 * Measured for 50, 100, 200 and 400 m and 10 s of rest, in men of national level, at the effort of a
 * long swim. Between those distances a straight line on the distance's logarithm is read, which is
 * ours. Outside 50 to 400 m, or with another rest, nothing is known here and nothing is guessed. It is
 * contested: 50s swum flat out on 5 and 10 s by boys of 15 were no faster than the continuous swim.
 *
 * @param repDistance - The distance of a rep, in metres.
 * @param rest - The rest between reps, in hundredths of a second: within a second of 10 s.
 * @returns The gain in speed and the measured gains around it, as ratios.
 * @throws {@link PacingError} `not-measured` for a distance or rest outside what was measured; `not-a-time`,
 *   `out-of-range`.
 * @example
 * restGain(100, fromSeconds(10)).gain; // => 0.0421
 * @see Olbrecht et al. 1985, Int. J. Sports Med. 6(2); Beidaris and Platanou 2025, Sci. J. Sport Perform., who
 *   found none.
 */
export function restGain(repDistance: number, rest: Hundredths): RestGain {
  const metres = numberOf(repDistance, 'The rep distance, in metres,', { above: 0, max: 1e6 });
  const pause = differenceOf(rest, 'The rest');
  const after = GAINS.findIndex(({ distance }) => distance >= metres);
  const right = GAINS[after];
  if (Math.abs(pause - REST) > 100 || right === undefined || metres < GAINS[0].distance) {
    const message = 'Rest was measured for 10 s and reps of 50 to 400 m only; ask within that.';
    throw new PacingError('not-measured', message, { repDistance, rest });
  }
  const left = GAINS[after - 1];
  if (left === undefined || right.distance === metres) {
    return {
      gain: right.gain,
      between: { least: right.gain, most: right.gain },
      interpolated: false,
    };
  }
  const share = Math.log(metres / left.distance) / Math.log(right.distance / left.distance);
  return {
    gain: left.gain + share * (right.gain - left.gain),
    between: { least: right.gain, most: left.gain },
    interpolated: true,
  };
}
