import { fieldsOf, itemsOf } from '../check.js';
import { sumOf } from '../statistics.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import { spanOf } from '../time/span.js';
import { type LaneTiming, timingOf } from './lane-timing.js';

/** How long a set takes a lane, from the first start. */
export interface SetDuration {
  /** When the last swimmer leaves for the last rep, in hundredths of a second. */
  readonly lastDeparture: Hundredths;
  /** When that swimmer comes in, in hundredths of a second; null where no swim was given. */
  readonly finished: Hundredths | null;
  /** What the set takes in a plan, its last rest included, in hundredths of a second. */
  readonly booked: Hundredths;
}

/**
 * How long a set on a send-off takes a lane. A set in notation is timed by {@link setTotals}.
 *
 * @param timing - `sendOff` and `stagger` in hundredths of a second (5 s apart unless given), `reps`
 *   and `swimmers` as counts (1 swimmer unless given), and `swim`: the last swimmer's time of a rep,
 *   in hundredths of a second, or left out.
 * @returns Last departure, finish and booked time, in hundredths of a second from the first start.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for counts of none or far too many, or a
 *   stagger below zero; `wrong-shape`; `too-large`.
 * @example
 * const set = setDuration({ sendOff: parseTime('1:30.00'), reps: 10, swim: parseTime('1:07.00') });
 * set.finished && formatTime(set.finished); // => '14:37.00'
 * formatTime(set.booked); // => '15:00.00'
 */
export function setDuration(
  timing: LaneTiming & {
    /** The last swimmer's time of a rep, in hundredths of a second. */
    readonly swim?: Hundredths;
  },
): SetDuration {
  const fields = fieldsOf(timing, 'The timing');
  const { sendOff, reps, stagger, swimmers } = timingOf(fields);
  const lastLeavesAfter = (swimmers - 1) * stagger;
  const lastDeparture = hundredths((reps - 1) * sendOff + lastLeavesAfter);
  const { swim } = fields;
  return {
    lastDeparture,
    finished: swim === undefined ? null : hundredths(lastDeparture + timeOf(swim, 'The swim')),
    booked: hundredths(reps * sendOff + lastLeavesAfter),
  };
}

/**
 * How long a practice takes, to see whether it fits into the hour: its sets as booked, with a pause between each
 * two.
 *
 * @param sets - The sets in order, as for {@link setDuration}.
 * @param pause - Time between two sets, in hundredths of a second; none unless given.
 * @returns The duration in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for a pause below zero; the codes of {@link setDuration}.
 * @example
 * const kick = { sendOff: parseTime('1:10.00'), reps: 8 };
 * const main = { sendOff: parseTime('1:30.00'), reps: 20, swimmers: 4 };
 * formatTime(practiceDuration([kick, main], fromSeconds(120))); // => '41:35.00'
 */
export function practiceDuration(
  sets: readonly LaneTiming[],
  pause: Hundredths = hundredths(0),
): Hundredths {
  const booked = itemsOf(sets, 'The sets').map((set) => setDuration(set as LaneTiming).booked);
  const between = spanOf(pause, 'The pause');
  return hundredths(sumOf(booked) + between * Math.max(0, booked.length - 1));
}
