import { textOf } from '../check.js';
import { attempt, PacingError, type Result } from '../errors.js';
import { show } from '../show.js';
import { formatTime } from './format-time.js';
import type { Hundredths } from './hundredths.js';
import { timeReadings } from './time-readings.js';

/**
 * Reads a time in any of the ways a coach writes one, with point or comma: `33.5`, `65.3`, `1:05`,
 * `1:05.3`, `1.05,30`, `16:46.6`, `1:02:03.45`, `:45`; also a signed difference, `−0.83`.
 *
 * Only one reading will do. Where the text could be two times (`105`, `1.05`) it is refused, and
 * the message names them; {@link timeReadings} lists them. A group after the first has two digits
 * below 60: seconds over 60 stand alone (`62.75`), and `1:75` is a slip. A third decimal is refused:
 * official timing has none.
 *
 * @param text - What was typed.
 * @returns The time in hundredths of a second.
 * @throws {@link PacingError} `time-unreadable`, with the position of the first character that no
 *   time contains; `time-ambiguous`; `wrong-shape` where it is no text.
 * @example
 * parseTime('16:46.6'); // => 100660
 * @example
 * parseTime('1.05,3'); // => 6530
 */
export function parseTime(text: string): Hundredths {
  const [reading, ...others] = timeReadings(text);
  if (reading === undefined) throw unreadable(text);
  if (others.length === 0) return reading;
  const times = [reading, ...others].map((time) => formatTime(time));
  const message = `${show(text)} could be ${times.slice(0, -1).join(', ')} or ${times.at(-1)}; write it with colon and decimals.`;
  throw new PacingError('time-ambiguous', message, text);
}

/**
 * {@link parseTime}, handing back its error instead of throwing it.
 *
 * @param text - What was typed.
 * @returns `{ ok: true, value }` with the time in hundredths of a second, or `{ ok: false, error }`.
 * @throws {@link PacingError} never: the error is in the result.
 * @example
 * safeParseTime('1:05.3'); // => { ok: true, value: 6530 }
 * @example
 * safeParseTime('soon').ok; // => false
 */
export function safeParseTime(text: string): Result<Hundredths> {
  return attempt(() => parseTime(text));
}

function unreadable(input: string): PacingError {
  const text = textOf(input, 'A time');
  const fail = (message: string, position: number) =>
    new PacingError('time-unreadable', message, text, position);
  const blanks = text.length - text.trimStart().length;

  if (text.trim() === '') return fail('A time is missing; write one like 33.50 or 1:05.3.', 0);
  if (/^\s*(NT|NS|DNS|DQ|DSQ|DNF|SCR)\s*$/i.test(text)) {
    return fail(`${show(text)} says that there is no time; leave it out.`, blanks);
  }
  const strange = text.slice(0, 64).search(/[^\d\s:.,+\-−'"]/u);
  if (strange >= 0) {
    return fail(`${show(text)} is no time; write one like 33.50 or 1:05.3.`, strange);
  }
  const beyond = /[:.,]([6-9]\d)/.exec(text);
  if (beyond !== null && /:/.test(text)) {
    const message = `${show(text)} has ${beyond[1]} where at most 59 can stand; write it again.`;
    return fail(message, beyond.index + 1);
  }
  const third = /[.,]\d\d(\d)/.exec(text);
  if (third !== null) {
    const message = `${show(text)} has a third decimal, which official timing does not use; drop it.`;
    return fail(message, third.index + 3);
  }
  return fail(`${show(text)} is no time; write one like 33.50 or 1:05.3.`, blanks);
}
