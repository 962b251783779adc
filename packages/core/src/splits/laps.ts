import { distanceOf, samePlace, snap } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { finishOf, type Splits, splitsOf } from './splits.js';

/**
 * The lap times of a swim: from mark to mark, or over a longer stretch (100s out of 50s). For halves, also
 * where no mark stands at halfway, see {@link halvesOf}.
 *
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @param every - The stretch of a lap in the pool's unit; from each mark to the next unless given.
 * @returns The lap times in hundredths of a second; they add up to the swim's time exactly.
 * @throws {@link PacingError} `no-mark-there` where a lap would end between two marks or beyond the
 *   finish; `out-of-range`; `wrong-shape` and the codes of {@link splitsFromMarks} where it is not
 *   a swim.
 * @example
 * const swim = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));
 * lapsOf(swim); // => [2810, 3045, 3120, 3055]
 * lapsOf(swim, 100); // => [5855, 6175]
 */
export function lapsOf(splits: Splits, every?: number): readonly Hundredths[] {
  const swim = splitsOf(splits);
  const times = every === undefined ? swim.marks.map((mark) => mark.time) : timesAt(swim, every);
  return times.map((time, i) => hundredths(time - (times[i - 1] ?? 0)));
}

function timesAt(swim: Splits, every: number): readonly Hundredths[] {
  const step = distanceOf(every, 'The distance of a lap');
  const times: Hundredths[] = [];
  for (const mark of swim.marks) {
    const wanted = every * (times.length + 1); // not of the snapped lap: three of 33⅓ are 100
    if (samePlace(mark.distance, wanted)) times.push(mark.time);
    else if (mark.distance > wanted) throw noMark(`has no mark at ${snap(wanted)}`, swim);
  }
  const finish = finishOf(swim).distance;
  if (samePlace(every * times.length, finish)) return times;
  throw noMark(`is ${finish} long, no whole number of laps of ${step}`, swim);
}

function noMark(why: string, swim: Splits): PacingError {
  const message = `The swim ${why}; choose laps that end at its marks.`;
  return new PacingError('no-mark-there', message, swim);
}
