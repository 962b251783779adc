import type { Hundredths } from 'backhalf';
import { plausibleTimes } from './plausible';
import { readTimeText } from './time-text';
import { type ListedTime, splitAtCommas, type TimesText, type Token, tokensOf } from './times-text';

/** A line as read: the time is whatever the field asks for, of a rep or of 100. */
interface ListedSwimmer {
  readonly name: string;
  readonly time: Hundredths;
  readonly lane?: number;
}

export interface SwimmersText {
  readonly swimmers: readonly ListedSwimmer[];
  /** Their times in order, for the field that asks about unclear ones. */
  readonly times: TimesText;
  /** What is wrong, one sentence a line. */
  readonly errors: readonly string[];
}

/**
 * Reads swimmers, one a line: name, expected time, and a lane where there is more than one.
 * Pasted from a spreadsheet or typed; a row of headings and numbers that count the rows are passed over.
 */
export function readSwimmers(text: string, distance: number): SwimmersText {
  const window = plausibleTimes(distance);
  const all = tokensOf(text).map((line) => line.flatMap((word) => splitAtCommas(word, window)));
  const headed = all.length > 1 && isHeading(all[0] ?? []);
  const lines = headed ? all.slice(1) : all;
  const times: ListedTime[] = [];
  const swimmers: ListedSwimmer[] = [];
  const errors: string[] = [];
  lines.forEach((line, i) => {
    const { name, time, lane } = partsOf(line, i + 1);
    const place = `Line ${lineOf(text, line[0])}`;
    const who = name || place;
    if (time === undefined) {
      errors.push(`${who} has no expected time; write it behind the name, like 1:05.`);
      return;
    }
    const read = readTimeText(time.text, who, window);
    times.push({ ...read, error: read.error && `${who}: ${read.error}`, at: time.at });
    if (read.error !== null) errors.push(`${who}: ${read.error}`);
    if (name === '') errors.push(`${place} has no name; write one before the time.`);
    if (read.time !== null && name !== '') {
      swimmers.push({ name, time: read.time, ...(lane !== undefined && { lane }) });
    }
  });
  if (lines.length === 0) errors.push('Enter the swimmers, one a line: name, expected time.');
  const leftOut = headed ? ['The first row was read as headings.'] : [];
  return { swimmers, times: { times, leftOut }, errors };
}

/** A row of words, one of them of the kind that heads a column: a name alone is a swimmer without a time. */
const isHeading = (line: readonly Token[]): boolean =>
  line.every(({ text }) => !/\d/.test(text)) &&
  line.some(({ text }) =>
    /^(names?|swimmers?|athletes?|paces?|times?|expected|lanes?)\b/i.test(text),
  );

/** The line of the text that a word stands in, counted as a person sees them. */
const lineOf = (text: string, word: Token | undefined): number =>
  text.slice(0, word?.at ?? 0).split(/\r\n|\r|\n/).length;

/** Name, time and lane of a line: the time is the last word with digits, but for a lane behind it. */
function partsOf(line: readonly Token[], n: number) {
  const words = new RegExp(`^#?${n}[.:)]?$`).test(line[0]?.text ?? '') ? line.slice(1) : line;
  const last = words.length - 1;
  const lane = /^(?:l|lane)?(\d{1,2})$/i.exec(words[last]?.text ?? '')?.[1];
  const before = words[last - 1]?.text.toLowerCase() === 'lane' ? last - 2 : last - 1;
  const behind = lane !== undefined && /\d/.test(words[before]?.text ?? '');
  const at = behind ? before : last;
  const time = /\d/.test(words[at]?.text ?? '') ? words[at] : undefined;
  const name = words.slice(0, time === undefined ? words.length : at);
  return {
    name: name.map(({ text }) => text).join(' '),
    time,
    lane: behind ? Number(lane) : undefined,
  };
}
