import { fieldsOf, itemsOf } from '../check.js';
import { distanceOf, snap } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';

/** Where a swimmer was, and when: one split as a results sheet prints it. */
export interface Mark {
  /** Distance from the start, in the pool's unit. */
  readonly distance: number;
  /** Time since the start, in hundredths of a second. */
  readonly time: Hundredths;
}

/**
 * A swim: its marks since the start, the last one the finish. Made by {@link splitsFromLaps},
 * {@link splitsFromCumulative} or {@link splitsFromMarks}; plain data, fit for JSON.
 */
export interface Splits {
  /** The marks in order, distance and time both growing; the last one is the finish. */
  readonly marks: readonly Mark[];
}

/** Enough for a Channel swim by 25s; keeps a mistyped list from filling the memory. */
const LONGEST = 100_000;

/**
 * A swim from marks at any distances, as where a split was missed or only some walls were timed.
 *
 * @param marks - Distances from the start in the pool's unit, and times since the start in hundredths
 *   of a second, both growing.
 * @returns The swim; distances in the pool's unit (to a micrometre), times in hundredths of a second.
 * @throws {@link PacingError} `marks-out-of-order`; `too-few-laps` where there is no mark;
 *   `wrong-shape`, `out-of-range` or `not-a-time` where a field is not what it should be.
 * @example
 * const swim = splitsFromMarks([
 *   { distance: 100, time: parseTime('58.10') },
 *   { distance: 150, time: parseTime('1:28.90') },
 *   { distance: 200, time: parseTime('1:59.40') },
 * ]);
 * lapsOf(swim); // => [5810, 3080, 3050]
 */
export function splitsFromMarks(marks: readonly Mark[]): Splits {
  const checked: Mark[] = [];
  let last: Mark = { distance: 0, time: hundredths(0) };
  const items = itemsOf(marks, 'The marks');
  if (items.length > LONGEST) {
    const message = `A swim has at most ${LONGEST} marks, not ${items.length}.`;
    throw new PacingError('out-of-range', message, marks);
  }
  for (const item of items) {
    const name = `Mark ${checked.length + 1}`;
    const { distance, time } = fieldsOf(item, name);
    const mark = {
      distance: distanceOf(distance, `${name}'s distance`),
      time: timeOf(time, `${name}'s time`),
    };
    if (mark.distance <= last.distance || mark.time <= last.time) {
      const grows = mark.distance <= last.distance ? 'distance' : 'time';
      const message = `${name} must have a greater ${grows} than the mark before it; check the order.`;
      throw new PacingError('marks-out-of-order', message, marks);
    }
    checked.push(mark);
    last = mark;
  }
  if (checked.length === 0) {
    throw new PacingError('too-few-laps', 'A swim needs at least one mark: its finish.', marks);
  }
  return { marks: checked };
}

/**
 * A swim from its lap times, each on its own, as a watch keeps them. Times since the start, as a results
 * sheet prints them, go to {@link splitsFromCumulative}; taken for laps they make a swim far too slow.
 *
 * @param every - The distance of each lap, in the pool's unit.
 * @param laps - The lap times in order, in hundredths of a second.
 * @returns The swim; distances in the pool's unit, times since the start in hundredths of a second.
 * @throws {@link PacingError} `too-few-laps` for an empty list; `not-a-time` for a lap not above
 *   zero; `out-of-range`, `wrong-shape`, `too-large`.
 * @example
 * const swim = splitsFromLaps(50, ['31.50', '33.50'].map(parseTime));
 * swim.marks; // => [{ distance: 50, time: 3150 }, { distance: 100, time: 6500 }]
 */
export function splitsFromLaps(every: number, laps: readonly Hundredths[]): Splits {
  let time = 0;
  const times = itemsOf(laps, 'The laps').map((lap, i) => {
    time += timeOf(lap, `Lap ${i + 1}`);
    return hundredths(time);
  });
  return splitsFromCumulative(every, times);
}

/**
 * A swim from the times since the start at evenly spaced marks, as a results sheet prints them. Lap times
 * go to {@link splitsFromLaps}.
 *
 * @param every - The distance from mark to mark, in the pool's unit.
 * @param times - The times since the start, growing, in hundredths of a second.
 * @returns The swim; distances in the pool's unit, times in hundredths of a second.
 * @throws {@link PacingError} `marks-out-of-order` where a time does not grow; `too-few-laps` for an
 *   empty list; `not-a-time`, `out-of-range`, `wrong-shape`.
 * @example
 * const swim = splitsFromCumulative(50, ['31.50', '1:05.00'].map(parseTime));
 * lapsOf(swim); // => [3150, 3350]
 */
export function splitsFromCumulative(every: number, times: readonly Hundredths[]): Splits {
  distanceOf(every, 'The distance of a lap');
  return splitsFromMarks(
    itemsOf(times, 'The times').map((time, i) => ({
      distance: snap(every * (i + 1)), // not of the snapped lap: three of 33⅓ are 100
      time: time as Hundredths, // checked by splitsFromMarks
    })),
  );
}

/** A swim out of plain data, checked again: it may have come from JSON. */
export function splitsOf(value: unknown, what = 'The swim'): Splits {
  return splitsFromMarks(fieldsOf(value, what)['marks'] as readonly Mark[]);
}

/** The last mark: the finish. */
export function finishOf({ marks }: Splits): Mark {
  return marks[marks.length - 1] as Mark; // a swim has at least one mark
}
