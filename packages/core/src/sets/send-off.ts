import { choiceOf, fieldsOf } from '../check.js';
import { PacingError } from '../errors.js';
import { formatTime } from '../time/format-time.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import { timeAtPace } from '../time/pace.js';
import { spanOf } from '../time/span.js';

/** Pace clocks are marked every five seconds, so send-offs are called in fives: common practice. */
const FIVE_SECONDS = 500 as Hundredths;

/** The rest wanted, and how a send-off is rounded. */
export interface SendOffOptions {
  /** Rest wanted after each swim, in hundredths of a second; zero or more. */
  readonly rest: Hundredths;
  /** The step send-offs are called in, in hundredths of a second; 5 s unless given (common practice). */
  readonly step?: Hundredths;
  /** To the next step `up` (nobody gets less rest than meant), `down`, or to the `nearest`; up unless given. */
  readonly round?: 'up' | 'down' | 'nearest';
}

/**
 * The rest a swimmer gets on a send-off. The send-off comes first: swapped, the sign turns.
 *
 * @param sendOff - Time from one start to the next, in hundredths of a second.
 * @param swim - Time of the swim, in hundredths of a second.
 * @returns The rest in hundredths of a second; below zero where the send-off was missed.
 * @throws {@link PacingError} `not-a-time`.
 * @example
 * restOn(parseTime('1:30'), parseTime('1:07.00')); // => 2300
 * @example
 * formatTime(restOn(parseTime('1:05'), parseTime('1:07.00'))); // => '−2.00'
 */
export function restOn(sendOff: Hundredths, swim: Hundredths): Hundredths {
  return hundredths(timeOf(sendOff, 'The send-off') - timeOf(swim, 'The swim'));
}

/**
 * The send-off for a swim and the rest wanted after it, in whole steps of the pace clock.
 *
 * Rounded up, nobody gets less rest than was wanted; one hundredth too slow then costs a whole step:
 * 1:05.00 and 20 s make 1:25, 1:05.01 makes 1:30. The send-off that is just made, without a rest in mind, is
 * {@link fastestSendOff}.
 *
 * @param swim - Time of the swim, in hundredths of a second.
 * @param options - `rest`: the rest wanted, in hundredths of a second; `step`: in hundredths of a
 *   second, 5 s unless given; `round`: `up`, `down` or `nearest`, up unless given.
 * @returns The send-off in hundredths of a second.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for a rest below zero, or where rounding
 *   leaves nothing; `unknown-choice`; `wrong-shape`; `too-large`.
 * @example
 * const swim = parseTime('1:07.00');
 * formatTime(sendOffFor(swim, { rest: fromSeconds(20) }), { decimals: 0 }); // => '1:30'
 * @example
 * const swim = parseTime('1:07.00');
 * const sendOff = sendOffFor(swim, { rest: fromSeconds(20), round: 'nearest' });
 * formatTime(sendOff, { decimals: 0 }); // => '1:25'
 */
export function sendOffFor(swim: Hundredths, options: SendOffOptions): Hundredths {
  const asked = fieldsOf(options, 'The options');
  const { rest, step: every = FIVE_SECONDS, round: way = 'up' } = asked;
  const step = timeOf(every, 'The step');
  const exact = timeOf(swim, 'The swim') + spanOf(rest, 'The rest');
  const over = exact % step;
  const down = exact - over;
  const round = choiceOf(way, ['up', 'down', 'nearest'], 'The rounding');
  const goesUp = over > 0 && (round === 'up' || (round === 'nearest' && 2 * over >= step));
  const sendOff = hundredths(goesUp ? down + step : down);
  if (sendOff > 0) return sendOff;
  const message = `Rounding by ${formatTime(step)} leaves no send-off; choose a smaller step or round up.`;
  throw new PacingError('out-of-range', message, every);
}

/**
 * The fastest send-off a pace can make: the first step of the clock that the swim does not miss. It
 * leaves whatever rest the step happens to leave, down to none. For a rest of your choice, see
 * {@link sendOffFor}.
 *
 * @param pace - The pace, in hundredths of a second per 100 of the pool's unit.
 * @param distance - The distance of the rep, in the pool's unit.
 * @param options - `step`: in hundredths of a second, 5 s unless given.
 * @returns The send-off in hundredths of a second.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for a distance not above zero; `wrong-shape`;
 *   `too-large`.
 * @example
 * const sendOff = fastestSendOff(parseTime('1:07.00'), 200);
 * formatTime(sendOff, { decimals: 0 }); // => '2:15'
 */
export function fastestSendOff(
  pace: Hundredths,
  distance: number,
  options: Pick<SendOffOptions, 'step'> = {},
): Hundredths {
  const { step = FIVE_SECONDS } = fieldsOf(options, 'The options');
  return sendOffFor(timeAtPace(pace, distance), {
    rest: hundredths(0),
    step: timeOf(step, 'The step'),
  });
}
