import { writeSet } from './notation/write-set.js';
import { parseSet } from './parse-set.js';
import type { PlannedSet } from './planned-set.js';

/**
 * Writes a set in one way only, to print, share or compare it: what differs in spelling and not in meaning
 * comes out alike, and is read back by {@link parseSet} as the same set.
 *
 * One line for each part of a block; words in full; `on` before a send-off, `r` before a rest, `hold`
 * before a target.
 *
 * @param set - The set: distances in the pool's unit, times in hundredths of a second.
 * @returns The text.
 * @throws {@link PacingError} `wrong-shape`, `out-of-range`, `not-a-time` or `unknown-choice` where a part
 *   of the set is not what it should be; `set-unreadable`, `set-ambiguous`, `set-contradiction` and
 *   `too-many-reps` as in {@link parseSet}.
 * @example
 * formatSet(parseSet('MS 8x50 fr @ :60, 3x{4×100 (-) r:20; 200 ez}'));
 * // => 'Main set\n8 x 50 free on 1:00\n3 x (4 x 100 negative split r 20 + 200 easy)'
 */
export function formatSet(set: PlannedSet): string {
  const text = writeSet(set);
  parseSet(text);
  return text;
}
