import { numberOf } from '../check.js';
import { snap } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { finishOf, type Splits, splitsOf } from './splits.js';

/**
 * The lap times of a swim: from mark to mark, or over a longer stretch.
 *
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @param every - The stretch of a lap in the pool's unit; from each mark to the next unless given.
 * @returns The lap times in hundredths of a second; they add up to the swim's time exactly.
 * @throws {@link PacingError} `no-mark-there` where a lap would end between two marks;
 *   `out-of-range`; `wrong-shape` and the codes of {@link splitsFromMarks} where the swim is none.
 * @example
 * const swim = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));
 * lapsOf(swim, 100); // => [5855, 6175]
 */
export function lapsOf(splits: Splits, every?: number): readonly Hundredths[] {
  const swim = splitsOf(splits);
  const times = every === undefined ? swim.marks.map((mark) => mark.time) : timesAt(swim, every);
  return times.map((time, i) => hundredths(time - (times[i - 1] ?? 0)));
}

function timesAt(swim: Splits, every: number): readonly Hundredths[] {
  const finish = finishOf(swim).distance;
  const step = numberOf(every, 'The distance of a lap', { above: 0, max: finish });
  const times: Hundredths[] = [];
  let wanted = snap(step);
  for (const mark of swim.marks) {
    if (mark.distance < wanted) continue;
    if (mark.distance > wanted) throw noMark(wanted, splitsHint(swim), swim);
    times.push(mark.time);
    wanted = snap(step * (times.length + 1));
  }
  if (snap(step * times.length) !== finish) throw noMark(wanted, splitsHint(swim), swim);
  return times;
}

const splitsHint = (swim: Splits): string =>
  swim.marks.length > 1
    ? `choose laps that end at marks, such as ${swim.marks[0]?.distance}`
    : 'add it';

function noMark(distance: number, hint: string, swim: Splits): PacingError {
  return new PacingError('no-mark-there', `The swim has no mark at ${distance}; ${hint}.`, swim);
}
