import { fieldsOf } from '../check.js';
import { differenceOf, type Hundredths } from '../time/hundredths.js';
import { type LaneTiming, swimsOf, timingOf } from './lane-timing.js';

/** The hand goes round in sixty seconds. */
const ROUND = 6000;

/**
 * What the hand of a 60-second pace clock shows as each swimmer of a lane leaves: when to go, rep by rep. The
 * top is 0.
 *
 * @param start - What the hand shows as the first swimmer first leaves, in hundredths of a second;
 *   0 is the top. A time beyond a minute counts by its seconds.
 * @param timing - `sendOff` and `stagger` in hundredths of a second (5 s apart unless given), `reps`
 *   and `swimmers` as counts (1 swimmer unless given).
 * @returns One row a swimmer, one reading a rep, in hundredths of a second from 0 to 59.99 s.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for counts of none or far too many, or a
 *   stagger below zero; `wrong-shape`.
 * @example
 * const timing = { sendOff: parseTime('1:40.00'), reps: 4, swimmers: 3 };
 * clockReadings(hundredths(0), timing).map((row) => row.map(toSeconds));
 * // => [[0, 40, 20, 0], [5, 45, 25, 5], [10, 50, 30, 10]]
 */
export function clockReadings(
  start: Hundredths,
  timing: LaneTiming,
): readonly (readonly Hundredths[])[] {
  const { sendOff, reps, stagger, swimmers } = timingOf(fieldsOf(timing, 'The timing'));
  const first = differenceOf(start, 'The start');
  // Each part is taken round the clock before it is multiplied, so that even absurd times stay exact.
  const round = (time: number): number => ((time % ROUND) + ROUND) % ROUND;
  return Array.from({ length: swimmers }, (_, swimmer) =>
    Array.from(
      { length: reps },
      (_, rep) =>
        round(round(first) + rep * round(sendOff) + swimmer * round(stagger)) as Hundredths,
    ),
  );
}

/**
 * What the hand of a 60-second pace clock shows as each swimmer of a lane comes in on time. When to leave is
 * {@link clockReadings}.
 *
 * @param start - What the hand shows as the first swimmer first leaves, in hundredths of a second;
 *   0 is the top.
 * @param timing - `sendOff` and `stagger` in hundredths of a second (5 s apart unless given), `reps` as
 *   a count, and `swims`: the time each swimmer is to hold, in hundredths of a second, in the order
 *   they leave.
 * @returns One row a swimmer, one reading a rep, in hundredths of a second from 0 to 59.99 s.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for counts of none or far too many, or a
 *   stagger below zero; `wrong-shape`.
 * @example
 * const swims = ['1:07.00', '1:08.50'].map(parseTime);
 * const timing = { sendOff: parseTime('1:30.00'), reps: 2, swims };
 * clockFinishes(hundredths(0), timing).map((row) => row.map(toSeconds));
 * // => [[7, 37], [13.5, 43.5]]
 */
export function clockFinishes(
  start: Hundredths,
  timing: Omit<LaneTiming, 'swimmers'> & {
    /** The time each swimmer is to hold, in hundredths of a second, in the order they leave. */
    readonly swims: readonly Hundredths[];
  },
): readonly (readonly Hundredths[])[] {
  const fields = fieldsOf(timing, 'The timing');
  const swims = swimsOf(fields['swims']);
  const lane = timingOf({ ...fields, swimmers: swims.length });
  return clockReadings(start, lane).map((row, i) =>
    row.map((left) => ((left + ((swims[i] as number) % ROUND)) % ROUND) as Hundredths),
  );
}
