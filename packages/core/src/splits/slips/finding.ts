import { formatTime } from '../../time/format-time.js';
import type { Hundredths } from '../../time/hundredths.js';
import type { Lap } from './lap-list.js';

/**
 * What is likely wrong, as a stable name.
 *
 * - `late-touch`, `early-touch`: the touch that ends the lap was taken late or early, so that the next
 *   lap lacks what this one has too much, or the other way round.
 * - `missed-touch`: two laps stand in one.
 * - `extra-touch`: one lap stands in two.
 * - `swapped`: two laps stand in each other's place.
 * - `typed`: ten seconds, a minute, a digit or the point is wrong.
 * - `impossible`: nobody swims that fast.
 * - `odd-lap`: far off, and no common slip explains it.
 */
export type SlipKind =
  | 'late-touch'
  | 'early-touch'
  | 'missed-touch'
  | 'extra-touch'
  | 'swapped'
  | 'typed'
  | 'impossible'
  | 'odd-lap';

/** A slip among a list of laps, before it is put into the swim's own terms. */
export interface Finding {
  readonly kind: SlipKind;
  /** How many laps it takes up, a count. */
  readonly span: number;
  /** How far off they are, as a share of a lap: of two that overlap the greater is meant. */
  readonly size: number;
  readonly why: string;
  /** What should stand in their place; null where nobody can tell. */
  readonly mend: readonly Lap[] | null;
}

/** A lap time in a sentence, to the hundredth. */
export const exactly = (time: number): string => formatTime(time as Hundredths);

/** A usual time in a sentence, to the tenth. */
export function about(time: number): string {
  const rounded = Math.round(time);
  if (!Number.isSafeInteger(rounded)) return 'far more';
  return formatTime(rounded as Hundredths, { decimals: 1 });
}

/** A difference in a sentence, to the tenth: "2.0 s", "1:02.0". */
export const seconds = (time: number): string => about(time) + (time < 5995 ? ' s' : '');
