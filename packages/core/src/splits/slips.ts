import { extraTouch } from './slips/extra-touch.js';
import type { Finding, SlipKind } from './slips/finding.js';
import { type Lap, lapList, replaced, swimOf } from './slips/lap-list.js';
import { loneLap } from './slips/lone-lap.js';
import { movedTouch } from './slips/moved-touch.js';
import { type Splits, splitsOf } from './splits.js';

/** A likely mistake of the timing or of the typing hand. */
export interface Slip {
  /** The number of the lap, a count from 1; where the slip takes up two laps, of the first. */
  readonly lap: number;
  /** What is likely wrong, as a stable name. */
  readonly kind: SlipKind;
  /** Why, in one sentence a coach can read. */
  readonly why: string;
  /** The whole swim with this slip mended and all else as it was; null where nobody can tell. */
  readonly mend: Splits | null;
}

/** A swim with more slips than that is wrong as a whole. */
const MOST = 20;

/**
 * Points at likely timing and typing mistakes in a swim: a touch taken late or early, a touch missed or
 * one too many, two laps swapped, a lap typed wrong, a lap nobody swims.
 *
 * A lap is judged by the laps next to it, per distance, so marks may be uneven, a swim may fade, and odd
 * and even laps may differ. It needs laps to compare: of two, only a gross slip shows. A change of stroke
 * can look like a slip, and in a medley of four laps the third often does. What is found is likely,
 * never certain: show it and ask. How far off a lap must be is a choice of ours, not a published value;
 * in 1,301 published swims it points at one, where a touch was ten seconds late. A whole set is told better
 * by {@link findSetSlips}, which has other reps to compare with.
 *
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @returns The slips in the order of their laps, at most twenty; each with the lap's number (a count
 *   from 1), its kind, why, and the mended swim where there is one. Mend one, then ask again.
 * @throws {@link PacingError} `wrong-shape` and the codes of {@link splitsFromMarks} where the swim is
 *   none.
 * @example
 * const swim = splitsFromLaps(50, [2849, 3017, 3020, 4046, 2043, 3034, 3032].map(hundredths));
 * const [slip] = findSlips(swim);
 * slip.kind; // => 'late-touch'
 * slip.lap; // => 4
 * lapsOf(slip.mend ?? swim); // => [2849, 3017, 3020, 3045, 3044, 3034, 3032]
 * @example
 * const swim = splitsFromLaps(50, [3150, 9350].map(hundredths));
 * findSlips(swim)[0].why;
 * // => 'Lap 2 took 1:33.50 where 33.9 is usual: it was probably typed with a minute too many.'
 */
export function findSlips(splits: Splits): readonly Slip[] {
  const laps = lapList(splitsOf(splits));
  const slips: Slip[] = [];
  let next = slipOfTouch(laps, 0);
  for (let k = 0; k < laps.length && slips.length < MOST; ) {
    const touch = next ?? null;
    next = slipOfTouch(laps, k + 1);
    // A late touch makes the one before it look early: of two that overlap, the greater is meant.
    const here = touch !== null && touch.size >= (next?.size ?? 0) ? touch : null;
    const found = here ?? loneLap(laps, k);
    if (found !== null) slips.push(slipAt(laps, k, found));
    if (found?.span === 2) next = slipOfTouch(laps, k + 2);
    k += found?.span ?? 1;
  }
  return slips;
}

const slipOfTouch = (laps: readonly Lap[], k: number): Finding | null =>
  extraTouch(laps, k) ?? movedTouch(laps, k);

function slipAt(laps: readonly Lap[], k: number, { kind, span, why, mend }: Finding): Slip {
  const mended = mend && swimOf(replaced(laps, k, span, mend));
  return { lap: k + 1, kind, why, mend: mended };
}
