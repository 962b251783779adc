import { snap } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { finishOf, type Splits } from '../splits/splits.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { shareOut } from '../time/share-out.js';
import { checkDifference, halfTimes } from './half-times.js';
import type { ReadShape } from './race-shape.js';

/** By how much the dive makes the first length faster, and the finish the last, in hundredths. */
export interface Edges {
  readonly startCredit: number;
  readonly finishLift: number;
}

/** The time of each length of a race, in hundredths; each above zero, all adding up to the goal. */
export function lengthTimes(
  shape: ReadShape,
  goal: Hundredths,
  count: number,
  edges: Edges,
): readonly Hundredths[] {
  const lengths = shaped(shape, goal, count, edges);
  const short = lengths.findIndex((length) => length <= 0);
  if (short < 0) return lengths;
  const message = `The plan leaves no time for length ${short + 1} of ${count}; choose a slower goal, or a smaller difference, credit or lift.`;
  throw new PacingError('out-of-range', message, goal);
}

function shaped(
  shape: ReadShape,
  goal: Hundredths,
  count: number,
  edges: Edges,
): readonly Hundredths[] {
  if (shape.kind === 'even') return evenLengths(goal, count, edges);
  if (shape.kind === 'halves') return halvedLengths(goal, count, shape.secondHalf, edges);
  if (edges.startCredit === 0 && edges.finishLift === 0) {
    return lengthsLike(shape.swim, goal, count);
  }
  const message =
    'A shape taken from swims has its dive and finish in it; leave out credit and lift.';
  throw new PacingError('wrong-shape', message, edges);
}

/** Lengths of one time each, but for what dive and finish take off the first and the last. */
function evenLengths(
  time: number,
  count: number,
  { startCredit, finishLift }: Edges,
): readonly Hundredths[] {
  const even = shareOut(time + startCredit + finishLift, Array<number>(count).fill(1));
  return even.map((length, i) =>
    hundredths(length - (i === 0 ? startCredit : 0) - (i === count - 1 ? finishLift : 0)),
  );
}

/** Two halves, each of even lengths, the second `secondHalf` slower than the first on the watch. */
function halvedLengths(
  goal: Hundredths,
  count: number,
  secondHalf: Hundredths,
  { startCredit, finishLift }: Edges,
): readonly Hundredths[] {
  if (count === 1) {
    const message = 'A race of one length has no wall to plan its halves by; plan it even.';
    throw new PacingError('halfway-not-bracketed', message, count);
  }
  checkDifference(secondHalf, goal);
  const half = Math.floor(count / 2);
  const middle = count % 2 === 0 ? [] : [middleLength()];
  const { first, second } = halfTimes(goal - (middle[0] ?? 0), secondHalf);
  return [
    ...evenLengths(first, half, { startCredit, finishLift: 0 }),
    ...middle,
    ...evenLengths(second, half, { startCredit: 0, finishLift }),
  ];

  /**
   * Halfway of an odd number of lengths lies in the middle one. It is swum at the mean of both halves'
   * paces, so that a straight line through it cuts the race as asked; being odd or even with the rest,
   * it leaves two halves of whole hundredths.
   */
  function middleLength(): Hundredths {
    const mean = (goal + startCredit + finishLift) / count;
    const odd = Math.abs(goal - secondHalf) % 2;
    return hundredths(2 * Math.round((mean - odd) / 2) + odd);
  }
}

/** Lengths as an earlier swim was swum, scaled to the goal and stretched to the number of lengths. */
function lengthsLike({ marks }: Splits, goal: number, count: number): readonly Hundredths[] {
  const { distance } = finishOf({ marks });
  const times = [0];
  let next = 0;
  for (let i = 1; i <= count; i++) {
    const at = snap((distance * i) / count);
    while (next < marks.length - 1 && marks[next]!.distance < at) next++;
    const right = marks[next]!;
    const left = marks[next - 1] ?? { distance: 0, time: 0 };
    // A straight line between two marks; multiplied first, so that on a mark it is the mark.
    const run = (right.time - left.time) * (at - left.distance);
    times.push(left.time + run / (right.distance - left.distance));
  }
  return shareOut(
    goal,
    times.slice(1).map((time, i) => time - times[i]!),
  );
}
