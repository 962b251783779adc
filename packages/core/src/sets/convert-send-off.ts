import { fieldsOf, numberOf } from '../check.js';
import { type ConvertPaceOptions, convertPace } from '../course/convert-pace.js';
import type { Pool } from '../course/pool.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import { type SendOffOptions, sendOffFor } from './send-off.js';

/** How {@link convertSendOff} converts and rounds. */
export interface ConvertSendOffOptions
  extends Omit<ConvertPaceOptions, 'per'>,
    Omit<SendOffOptions, 'rest'> {
  /** The rep the send-off is for, the same number in both pools' units. */
  readonly repDistance: number;
}

/**
 * Converts a send-off to another pool, by turns, and rounds it for the pace clock: for a set that moves from
 * a 50 m pool to a 25 yd one. Swim and rest scale together; for a rest of your choice convert the pace
 * ({@link convertPace}) and ask {@link sendOffFor}. Published gains per turn disagree; see
 * {@link TURN_GAINS}.
 *
 * @param sendOff - Time from one start to the next, in hundredths of a second.
 * @param from - The pool it is for.
 * @param to - The pool to convert to.
 * @param options - `repDistance` in the pool's unit; `gainPerTurn` in hundredths of a second;
 *   `yardRatio`, a ratio; `step`: in hundredths of a second, 5 s unless given; `round`: `up`, `down`
 *   or `nearest`, up unless given.
 * @returns The send-off in hundredths of a second.
 * @throws {@link PacingError} `gain-missing`; `not-whole-lengths` where the rep ends between the
 *   walls; `not-a-time`, `out-of-range`, `too-large`, `wrong-shape`, `unknown-choice`.
 * @example
 * const options = { repDistance: 100, gainPerTurn: hundredths(60) };
 * formatTime(convertSendOff(parseTime('1:40.00'), LCM, SCY, options)); // => '1:35.00'
 */
export function convertSendOff(
  sendOff: Hundredths,
  from: Pool,
  to: Pool,
  options: ConvertSendOffOptions,
): Hundredths {
  const { repDistance, gainPerTurn, yardRatio, ...rounding } = fieldsOf(options, 'The options');
  const per = numberOf(repDistance, 'The rep distance', { min: 1, max: 1e6 });
  const turns = { per, gainPerTurn, yardRatio } as ConvertPaceOptions;
  const exact = convertPace(timeOf(sendOff, 'The send-off'), from, to, turns);
  return sendOffFor(exact, { ...rounding, rest: hundredths(0) });
}
