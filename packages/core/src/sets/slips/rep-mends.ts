import { about, exactly, type SlipKind, seconds } from '../../splits/slips/finding.js';
import { type Lap, replaced } from '../../splits/slips/lap-list.js';
import { retypings } from '../../splits/slips/retypings.js';
import { sharedOut, type UsualRep } from './usual-rep.js';

/** A slip in one rep, before it is put into the set's own terms. */
export interface RepSlip {
  readonly kind: SlipKind;
  /** The lap, counted from 0; the first of two. */
  readonly lap: number;
  /** Why, without the rep's number: "lap 2 took …". */
  readonly why: string;
  /** What should stand in place of all its laps; null where nobody can tell. */
  readonly mend: readonly Lap[] | null;
}

/**
 * How suspected laps of a rep with the usual marks may have come to be off, each undone; the likelier
 * come first.
 */
export function repMends(
  laps: readonly Lap[],
  suspects: readonly number[],
  usual: UsualRep,
): readonly RepSlip[] {
  const touches = suspects.filter((k) => k + 1 < laps.length);
  return [
    ...touches.map((k) => swapped(laps, k, usual)),
    ...touches.map((k) => moved(laps, k, usual)),
    ...suspects.flatMap((k) => typed(laps, k, usual)),
    ...touches.map((k) => missed(laps, k, usual)),
  ];
}

const timeAt = (laps: readonly Lap[], k: number): number => (laps[k] as Lap).time;

/** "lap 2 took 1:33.50 where 33.5 is usual". */
export const lapTook = (laps: readonly Lap[], k: number, usual: UsualRep): string =>
  `lap ${k + 1} took ${exactly(timeAt(laps, k))} where ${about(timeAt(usual.laps, k))} is usual`;

/** The same of lap `k` and the next. */
const bothTook = (laps: readonly Lap[], k: number, usual: UsualRep): string =>
  `laps ${k + 1} and ${k + 2} took ${exactly(timeAt(laps, k))} and ${exactly(timeAt(laps, k + 1))} where ${about(timeAt(usual.laps, k))} and ${about(timeAt(usual.laps, k + 1))} are usual`;

function swapped(laps: readonly Lap[], k: number, usual: UsualRep): RepSlip {
  const [a, b] = [laps[k] as Lap, laps[k + 1] as Lap];
  const swap = [
    { ...a, time: b.time },
    { ...b, time: a.time },
  ];
  const why = `${bothTook(laps, k, usual)}: they were probably swapped, or the touch between them was taken late or early.`;
  return { kind: 'swapped', lap: k, why, mend: replaced(laps, k, 2, swap) };
}

function typed(laps: readonly Lap[], k: number, usual: UsualRep): readonly RepSlip[] {
  const lap = laps[k] as Lap;
  const before = laps.slice(0, k).reduce((sum, { time }) => sum + time, 0);
  const running = { time: lap.time - before, slip: 'the time since the start of the rep' };
  const meant = running.time > 0 ? [...retypings(lap.time), running] : retypings(lap.time);
  return meant.map(({ time, slip }) => ({
    kind: 'typed',
    lap: k,
    why: `${lapTook(laps, k, usual)}: it was probably typed with ${slip}.`,
    mend: replaced(laps, k, 1, [{ ...lap, time }]),
  }));
}

/** Two laps in one, so that a later touch than the finish closes the rep. */
function missed(laps: readonly Lap[], k: number, usual: UsualRep): RepSlip {
  const both = sharedOut(timeAt(laps, k), usual.laps.slice(k, k + 2));
  const why = `${lapTook(laps, k, usual)}: a touch was probably missed, and two laps stand in one.`;
  return { kind: 'missed-touch', lap: k, why, mend: replaced(laps, k, 1, both).slice(0, -1) };
}

function moved(laps: readonly Lap[], k: number, usual: UsualRep): RepSlip {
  const both = sharedOut(timeAt(laps, k) + timeAt(laps, k + 1), usual.laps.slice(k, k + 2));
  const late = timeAt(laps, k) - timeAt(both, 0);
  const how = late > 0 ? 'late' : 'early';
  const why = `${bothTook(laps, k, usual)}: the touch between them was probably taken ${seconds(Math.abs(late))} ${how}.`;
  return { kind: `${how}-touch`, lap: k, why, mend: replaced(laps, k, 2, both) };
}
