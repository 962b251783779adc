import { attempt, PacingError, type Result } from '../errors.js';
import { show } from '../show.js';
import { foldSigns, LONGEST } from './fold-signs.js';
import { formatTime } from './format-time.js';
import { type Hundredths, hundredths } from './hundredths.js';
import { plainTime } from './plain-time.js';
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
 * @throws {@link PacingError} `time-unreadable`, with the position where reading fails;
 *   `time-ambiguous`; `wrong-shape` where it is not text.
 * @example
 * parseTime('16:46.6'); // => 100660
 * @example
 * formatTime(parseTime('1.05,3')); // => '1:05.30'
 */
export function parseTime(text: string): Hundredths {
  const plain = typeof text === 'string' ? plainTime(text) : null;
  if (plain !== null) return hundredths(plain);
  const [reading, ...others] = timeReadings(text);
  if (reading === undefined) throw unreadable(text);
  if (others.length === 0) return reading;
  const times = [reading, ...others].map((time) => formatTime(time));
  const message = `${show(text)} could be ${times.slice(0, -1).join(', ')} or ${times.at(-1)}; write it with colon and decimals.`;
  throw new PacingError('time-ambiguous', message, text);
}

/**
 * {@link parseTime}, handing back its error instead of throwing it: for a field that a person is typing in.
 *
 * @param text - What was typed.
 * @returns `{ ok: true, value }` with the time in hundredths of a second, or `{ ok: false, error }`.
 * @throws {@link PacingError} never: the error is in the result.
 * @example
 * safeParseTime('1:05.3'); // => { ok: true, value: 6530 }
 * @example
 * const slip = safeParseTime('1:75');
 * slip.ok || slip.error.message; // => '"1:75" has 75 where at most 59 can stand; write it again.'
 */
export function safeParseTime(text: string): Result<Hundredths> {
  return attempt(() => parseTime(text));
}

const HOW = 'write one like 33.50 or 1:05.3';

/** What goes wrong where, on folded signs; the match begins where reading fails. */
const SLIPS: readonly (readonly [RegExp, (found: string) => string])[] = [
  [/[^\d :.,+-]/, () => `is no time; ${HOW}`],
  [
    /(?<=:)[6-9]\d(?!\d)|(?<=[.,])[6-9]\d(?=[:.,])/,
    (found) => `has ${found} where at most 59 can stand; write it again`,
  ],
  [/(?<=:)(?!\d\d(?!\d))/, () => 'needs two digits after each colon, like 1:05'],
  [
    /(?<=[.,]\d\d)\d+(?!.*[:.,])/,
    () => 'has a third decimal, which official timing does not use; drop it',
  ],
  [/(?<=\d) +(?=\d)/, () => `has a blank between two digits; ${HOW}`],
];

function unreadable(text: string): PacingError {
  const fail = (message: string, position: number) =>
    new PacingError('time-unreadable', message, text, position);
  if (text.length > LONGEST) {
    return fail(`A time has at most ${LONGEST} characters, not ${text.length}; ${HOW}.`, LONGEST);
  }
  const signs = foldSigns(text);
  if (signs.trim() === '') return fail(`A time is missing; ${HOW}.`, 0);
  const blanks = signs.length - signs.trimStart().length;
  if (/^(NT|NS|DNS|DQ|DSQ|DNF|SCR)$/i.test(signs.trim())) {
    return fail(`${show(text)} says that there is no time; leave it out.`, blanks);
  }

  const body = signs
    .replaceAll("'", ':')
    .replaceAll('"', '.')
    .replace(/(?:s|sec) *$/i, '');
  const slips = SLIPS.flatMap(([pattern, say]) => {
    const found = pattern.exec(body);
    return found === null ? [] : [{ at: found.index, says: say(found[0]) }];
  });
  const first = slips.sort((a, b) => a.at - b.at)[0] ?? { at: blanks, says: `is no time; ${HOW}` };
  return fail(`${show(text)} ${first.says}.`, first.at);
}
