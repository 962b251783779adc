import { formatTime, type Hundredths, timeReadings } from 'backhalf';
import { plausibleTimes } from './plausible';
import { readTimeText, type TimeText, withChoice } from './time-text';

/** One time of a list, and where in the text it stands. */
export interface ListedTime extends TimeText {
  readonly at: number;
}

export interface TimesText {
  readonly times: readonly ListedTime[];
  /** What was passed over and why, in sentences. */
  readonly leftOut: readonly string[];
}

export interface TimesOptions {
  /** What one time is called: `Lap`. */
  readonly label: string;
  /** The distance between two times, in the pool's unit. */
  readonly every: number;
  /** Whether each time counts from the start, or from the time before. */
  readonly running: boolean;
}

export interface Token {
  readonly text: string;
  readonly at: number;
}

/**
 * Reads times out of what was typed or pasted: one below the other, side by side, or a table from a
 * spreadsheet, with tabs, commas, semicolons or blanks between. A heading row and columns of
 * numbers, distances or words beside the times are passed over, and that is said.
 */
export function readTimesText(text: string, options: TimesOptions): TimesText {
  const windowOf = (i: number) =>
    plausibleTimes(options.running ? options.every * (i + 1) : options.every);
  const lines = tokensOf(text).map((tokens, i) =>
    tokens.flatMap((token) => splitAtCommas(token, windowOf(i))),
  );
  const heading = lines[0]?.every(({ text }) => !/\d/.test(text)) && lines.length > 1;
  const body = heading ? lines.slice(1) : lines;
  const { tokens, leftOut } = columnOfTimes(body, options);

  return {
    times: tokens.map(({ text, at }, i) => {
      const read = readTimeText(text, `${options.label} ${i + 1}`, windowOf(i));
      const error = read.error && `${options.label} ${i + 1}: ${read.error}`;
      return { ...read, error, at };
    }),
    leftOut: heading ? ['The first row was read as headings.', ...leftOut] : leftOut,
  };
}

/** The text with one of a time's readings written behind it, so that it is asked no more. */
export function chooseTime(
  text: string,
  { at, typed, time }: ListedTime,
  chosen: Hundredths,
): string {
  const was = time === null ? typed : withChoice(typed, time);
  return text.slice(0, at) + withChoice(typed, chosen) + text.slice(at + was.length);
}

/** The words of each line that has any. */
export function tokensOf(text: string): readonly (readonly Token[])[] {
  return [...text.matchAll(/[^\r\n]+/g)]
    .map(({ 0: line, index }) =>
      [...line.matchAll(/[^\s;]+/g)]
        .map((word) => {
          const bare = word[0].replace(/^,+|,+$/g, '');
          return { text: bare, at: index + word.index + word[0].indexOf(bare) };
        })
        .filter((token) => token.text !== ''),
    )
    .filter((tokens) => tokens.length > 0);
}

/** A comma is a decimal comma where the whole makes a sensible time, else it stands between two. */
export function splitAtCommas(token: Token, within: ReturnType<typeof plausibleTimes>): Token[] {
  if (!token.text.includes(',') || timeReadings(token.text, within).length > 0) return [token];
  return [...token.text.matchAll(/[^,]+/g)].map((part) => ({
    text: part[0],
    at: token.at + part.index,
  }));
}

/** Out of a table, the column that is asked for; out of anything else, every word in turn. */
function columnOfTimes(rows: readonly Token[][], { every, running }: TimesOptions) {
  const width = rows[0]?.length ?? 0;
  const whole = { tokens: rows.flat(), leftOut: [] as string[] };
  if (rows.length < 2 || width < 2 || rows.some((row) => row.length !== width)) return whole;

  const columns = Array.from({ length: width }, (_, c) => rows.flatMap((row) => row[c] ?? []));
  const kept = columns.filter((column) => !isBeside(column, every));
  const [first, second] = kept;
  if (first === undefined) return whole;
  const leftOut =
    kept.length < width ? ['Columns of numbers, distances or words were left out.'] : [];
  if (second === undefined) return { tokens: first, leftOut };
  const pair = kept.length === 2 ? lapsAndRunning(first, second) : null;
  if (pair === null) return { tokens: kept.length < width ? rowByRow(kept) : rows.flat(), leftOut };
  const also = running
    ? 'Laps stood beside the running times and agree with them.'
    : 'Running times stood beside the laps and agree with them.';
  return { tokens: running ? pair.running : pair.laps, leftOut: [...leftOut, also] };
}

const rowByRow = (columns: readonly Token[][]) =>
  (columns[0] ?? []).flatMap((_, r) => columns.flatMap((column) => column[r] ?? []));

/** A column of words, of row numbers, or of the distances at which times were taken. */
function isBeside(column: readonly Token[], every: number): boolean {
  if (column.every(({ text }) => !/\d/.test(text))) return true;
  const numbers = column.map(({ text }) => Number(/^#?(\d+)(m|yd|y)?[.:]?$/i.exec(text)?.[1]));
  const steps = [1, every, numbers[0] ?? 0];
  return steps.some(
    (step) =>
      step > 0 &&
      numbers.every((n, i) => n === step * (i + 1)) &&
      (step === 1 || step === every || step % 25 === 0),
  );
}

/** Tells laps from running times where one column adds up to the other. */
function lapsAndRunning(a: readonly Token[], b: readonly Token[]) {
  const [x, y] = [a, b].map((column) => column.map(({ text }) => timeReadings(text)[0] ?? 0));
  const addsUp = (laps: readonly number[], sums: readonly number[]) => {
    let sum = 0;
    return laps.every((lap, i) => (sum += lap) === sums[i]);
  };
  if (x === undefined || y === undefined) return null;
  if (addsUp(x, y)) return { laps: [...a], running: [...b] };
  if (addsUp(y, x)) return { laps: [...b], running: [...a] };
  return null;
}

const listed = 40;

/** How a list was read, in one line; nothing until all of it reads. */
export function saidTimes(times: readonly ListedTime[], what: string): string | null {
  const read = times.flatMap(({ time }) => (time === null ? [] : [formatTime(time)]));
  if (read.length === 0 || read.length !== times.length) return null;
  const count = `Read as ${read.length} ${what}${read.length === 1 ? '' : 's'}`;
  if (read.length > listed) return `${count}, from ${read[0]} to ${read.at(-1)}.`;
  return `${count}: ${read.join(' · ')}.`;
}
