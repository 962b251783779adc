import { fieldsOf, itemsOf } from '../check.js';
import { distanceOf, samePlace } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Lap, lapList, swimOf } from '../splits/slips/lap-list.js';
import { findSlips, type Slip } from '../splits/slips.js';
import { finishOf, type Splits, splitsOf } from '../splits/splits.js';
import { slipOfMarks, slipOfRep } from './slips/rep-slip.js';
import { nearestTo, usualRep } from './slips/usual-rep.js';
import type { SwumSet } from './swum-set.js';

/** A likely mistake of the timing or of the typing hand in one rep of a set. */
export interface SetSlip extends Slip {
  /** The number of the rep, a count from 1. */
  readonly rep: number;
  /** The number of the lap within the rep, a count from 1; where the slip takes up two laps, of the first. */
  readonly lap: number;
  /** The whole rep with this slip mended; null where nobody can tell. */
  readonly mend: Splits | null;
}

/** With fewer reps alike there is nothing to call usual. */
const ENOUGH = 3;

/**
 * Points at likely timing and typing mistakes in a swum set, by comparing each rep with the others
 * around it: a missed halfway touch, two laps in one, a touch taken late or early, halves swapped, a
 * minute typed wrong.
 *
 * Two laps of one rep say little about each other; the same laps of the other reps say much more, and
 * a set that fades from rep to rep stays quiet. Ask this before {@link readSet}, which refuses a rep that
 * ends at another distance; here that is a slip like another. A mend is likely, never certain: show it
 * and ask. How far off a lap must be is a choice of ours, not a published value.
 *
 * @param set - The set as timed: distances in the pool's unit, times in hundredths of a second. Reps may
 *   end at other distances than the set's.
 * @returns The slips in the order of the reps, at most one a rep where three reps or more have the same
 *   marks; with fewer, what {@link findSlips} says of each. Mend one, then ask again.
 * @throws {@link PacingError} `too-few-reps` for an empty set; `out-of-range`, `wrong-shape` and the codes
 *   of {@link splitsFromMarks} where a part of the set is not what it should
 *   be.
 * @example
 * const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
 * const missed = splitsFromMarks([{ distance: 100, time: hundredths(6500) }]);
 * const set = { pool: SCM, repDistance: 100, reps: [rep, rep, rep, missed, rep] };
 * const [slip] = findSetSlips(set);
 * slip.rep; // => 4
 * slip.kind; // => 'missed-touch'
 * lapsOf(slip.mend ?? missed); // => [3150, 3350]
 */
export function findSetSlips(set: SwumSet): readonly SetSlip[] {
  const { repDistance, reps: items } = fieldsOf(set, 'The set');
  const distance = distanceOf(repDistance, 'The rep distance');
  const reps = itemsOf(items, 'The reps').map((rep, i) => splitsOf(rep, `Rep ${i + 1}`));
  if (reps.length === 0) {
    throw new PacingError('too-few-reps', 'The set has no rep; add at least one.', set);
  }
  const alike = commonest(reps, distance);
  if (alike.length < ENOUGH) {
    return reps.flatMap((rep, i) => findSlips(rep).map((slip) => ({ rep: i + 1, ...slip })));
  }
  const laps = reps.map(lapList);
  let before = 0; // reps alike that are done
  return laps.flatMap((own, i) => {
    const near = nearestTo(i, alike, before);
    const usual = usualRep(near.map((j) => laps[j] as readonly Lap[]));
    const isAlike = alike[before] === i;
    if (isAlike) before++;
    const found = isAlike ? slipOfRep(own, usual) : slipOfMarks(own, usual);
    if (found === null) return [];
    const { kind, lap, why, mend } = found;
    const told = `In rep ${i + 1} ${why}`;
    return [{ rep: i + 1, lap: lap + 1, kind, why: told, mend: mend && swimOf(mend) }];
  });
}

/** Which reps have the marks that most of those have that end where they should. */
function commonest(reps: readonly Splits[], distance: number): readonly number[] {
  const groups = new Map<string, number[]>();
  for (const [i, rep] of reps.entries()) {
    if (!samePlace(finishOf(rep).distance, distance)) continue;
    const marks = rep.marks.map((mark) => mark.distance).join(' ');
    const group = groups.get(marks) ?? [];
    group.push(i);
    groups.set(marks, group);
  }
  return [...groups.values()].reduce((a, b) => (b.length > a.length ? b : a), []);
}
