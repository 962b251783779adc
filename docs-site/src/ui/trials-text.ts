import type { Hundredths } from 'backhalf';
import { plausibleTimes } from './plausible';
import { readTimeText } from './time-text';
import { type ListedTime, type TimesText, tokensOf } from './times-text';

/** A swim over a distance, in the unit it was typed in. */
export interface TypedSwim {
  readonly distance: number;
  readonly time: Hundredths;
}

/** Swims as typed, a distance and a time to a line, and what each line came to. */
export interface TrialsText {
  /** All the times in order, for the field that asks about unclear ones. */
  readonly text: TimesText;
  readonly swims: readonly TypedSwim[];
  /** What is wrong, one sentence a line. */
  readonly errors: readonly string[];
}

const most = 50;
const least = 10; // shorter ones are no swims, and more likely a number that counts the lines

/** A distance at the head of a line, its unit perhaps, and what parts it from the time. */
const headed = /^[^\S\r\n]*(\d{2,5})\s*(?:m|yd|y)?(?:\s*[;,]|\s)\s*(?=\S)/i;

/** Reads swims, one a line: `400 4:53.2`. Words and lines of headings are passed over. `what` is one swim. */
export function readTrials(text: string, what: string): TrialsText {
  const lines = [...text.matchAll(/[^\r\n]+/g)].filter(([line]) => /\d/.test(line));
  const listed: ListedTime[] = [];
  const swims: TypedSwim[] = [];
  const errors: string[] = [];
  lines.slice(0, most).forEach(({ 0: line, index }, i) => {
    const name = `${what} ${i + 1}`;
    const [head = '', digits] = headed.exec(line) ?? [];
    const distance = Number(digits);
    const times = (tokensOf(line.slice(head.length))[0] ?? []).filter(({ text: word }) =>
      /\d/.test(word),
    );
    const [time] = times;
    if (head === '' || distance < least || time === undefined || times.length > 1) {
      errors.push(`${name} must be a distance and a time, like 400 4:53.2.`);
      return;
    }
    const read = readTimeText(time.text, `Time of ${name}`, plausibleTimes(distance));
    listed.push({ ...read, at: index + head.length + time.at });
    if (read.error !== null) errors.push(`${name}: ${read.error}`);
    if (read.time !== null) swims.push({ distance, time: read.time });
  });
  if (lines.length > most)
    errors.push(`These are ${lines.length} lines; ${most} are read at most.`);
  return { text: { times: listed, leftOut: [] }, swims, errors };
}
