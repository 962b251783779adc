import { textOf } from '../check.js';
import { attempt, PacingError, type Result } from '../errors.js';
import { LONGEST_TEXT } from './notation/limits.js';
import { readBlocks } from './notation/read-blocks.js';
import { Reader } from './notation/reader.js';
import type { PlannedSet } from './planned-set.js';

/**
 * Reads a set, or a whole practice, as coaches write it: `20 x 100 on 1:30`, `8 x 50 r 15`,
 * `3 x (4 x 100 on 1:30 + 200 easy)`, `broken 400: 4 x 100 r 10`, with strokes, kinds, targets, shapes,
 * headings, several lines and comments (`#` or `//` to the end of the line).
 *
 * There is no standard, and handouts disagree. Where they do, the reading that was taken is in `notes`;
 * where no reading is clearly meant, the text is refused and the message shows both. `10 x 100 on :30`
 * is refused: a send-off shorter than 50 s per 100 (a choice of ours) is more likely a rest. Sets of
 * breath-holding are refused with a caution. What the set adds up to is {@link setTotals}; one spelling for
 * all is {@link formatSet}.
 *
 * @param text - What was written, up to 100,000 characters.
 * @returns The set as a tree: distances in the pool's unit, times in hundredths of a second, each part
 *   with its place in the text, a count of characters from 0.
 * @throws {@link PacingError} `set-unreadable`, `set-ambiguous`, `time-ambiguous`, `set-contradiction`,
 *   `breath-holding`, `too-many-reps`, each with its position; `out-of-range` for a text that is too long
 *   or a distance of nought; `wrong-shape` where it is not text.
 * @example
 * const [block] = parseSet('20 x 100 free on 1:30').blocks;
 * block.items[0].sendOffs; // => [9000]
 * @example
 * parseSet('4 x 100 @ 1:30 descend 1-4').notes.map(({ code }) => code);
 * // => ['at-is-send-off', 'descend-is-faster']
 */
export function parseSet(text: string): PlannedSet {
  const input = textOf(text, 'A set');
  if (input.length > LONGEST_TEXT) {
    const message = `A set is at most ${LONGEST_TEXT} characters long; write it in parts.`;
    throw new PacingError('out-of-range', message, input);
  }
  const reader = new Reader(input);
  return { blocks: readBlocks(reader), notes: reader.notes };
}

/**
 * {@link parseSet}, handing back its error instead of throwing it: for a field that a person is typing in.
 *
 * @param text - What was written, up to 100,000 characters.
 * @returns `{ ok: true, value }` with the set as a tree, or `{ ok: false, error }`.
 * @throws {@link PacingError} never: the error is in the result.
 * @example
 * const result = safeParseSet('10 x 100 on :30');
 * result.ok || [result.error.code, result.error.position]; // => ['set-ambiguous', 9]
 */
export function safeParseSet(text: string): Result<PlannedSet> {
  return attempt(() => parseSet(text));
}
