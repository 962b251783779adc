import { fieldsOf, itemsOf } from '../check.js';
import { distanceOf, type Pool, poolOf, samePlace } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { finishOf, type Splits, splitsOf } from '../splits/splits.js';
import { differenceOf, type Hundredths, hundredths, timeOf } from '../time/hundredths.js';

/** A set as it was swum and timed: one swim for each rep. What {@link readSet} and the projections read. */
export interface SwumSet {
  /** The pool it was swum in. */
  readonly pool: Pool;
  /** The distance of each rep, in the pool's unit. */
  readonly repDistance: number;
  /** One swim for each rep, in order; a mark at halfway makes it readable by halves. */
  readonly reps: readonly Splits[];
  /** Time from one start to the next, in hundredths of a second. Give this or `rest`, or neither. */
  readonly sendOff?: Hundredths;
  /** Rest after each rep, in hundredths of a second. Give this or `sendOff`, or neither. */
  readonly rest?: Hundredths;
}

/** A set out of plain data. */
export function setOf(value: unknown): SwumSet {
  const { pool, repDistance, reps, sendOff, rest } = fieldsOf(value, 'The set');
  const snapped = distanceOf(repDistance, 'The rep distance');
  const distance = repDistance as number; // not snapped: three of 33⅓ are 100
  if (sendOff !== undefined && rest !== undefined) {
    const message = 'A set is swum on a send-off or on a fixed rest; give only one of them.';
    throw new PacingError('wrong-shape', message, value);
  }
  const swims = itemsOf(reps, 'The reps').map((rep, i) => repOf(rep, `Rep ${i + 1}`, snapped));
  if (swims.length === 0) {
    throw new PacingError('too-few-reps', 'The set has no rep; add at least one.', value);
  }
  return {
    pool: poolOf(pool),
    repDistance: distance,
    reps: swims,
    ...(sendOff !== undefined && { sendOff: timeOf(sendOff, 'The send-off') }),
    ...(rest !== undefined && { rest: restTime(rest) }),
  };
}

function repOf(value: unknown, name: string, distance: number): Splits {
  const swim = splitsOf(value, name);
  const end = finishOf(swim).distance;
  if (samePlace(end, distance)) return swim;
  const message = `${name} ends at ${end}, but the set's reps are ${distance}; add its last mark or change the distance.`;
  throw new PacingError('rep-distance-differs', message, value);
}

function restTime(value: unknown): Hundredths {
  const rest = differenceOf(value, 'The rest');
  if (rest >= 0) return rest;
  throw new PacingError('out-of-range', 'The rest must be zero or more.', value);
}

/** Rest before the next start, in hundredths; below zero where the send-off was missed; or null. */
export function restAfter(set: SwumSet, swim: Hundredths): Hundredths | null {
  if (set.sendOff !== undefined) return hundredths(set.sendOff - swim);
  return set.rest ?? null;
}
