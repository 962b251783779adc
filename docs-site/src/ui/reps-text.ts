import {
  type Hundredths,
  isPacingError,
  type Splits,
  splitsFromCumulative,
  splitsFromLaps,
} from 'backhalf';
import { plausibleTimes } from './plausible';
import { readTimeText } from './time-text';
import { type ListedTime, splitAtCommas, type TimesText, tokensOf } from './times-text';

/** Reps as typed, one a line, and what each line came to. */
export interface RepsText {
  /** All the times in order, for the field that asks about unclear ones. */
  readonly text: TimesText;
  readonly reps: readonly Splits[];
  /** What is wrong, one sentence a line. */
  readonly errors: readonly string[];
}

interface Options {
  readonly distance: number;
  /** Whether the times of a line count from the rep's start: 31.5, then 1:05. */
  readonly running: boolean;
  /** What a rep is called where one cannot be read; `Rep` unless given. */
  readonly what?: string;
}

/**
 * Reads reps, one a line: two times a rep are its halves, four its quarters, a single one the whole
 * rep. A number at the head of a line is passed over where it only counts the lines, and so is a
 * line of headings.
 */
export function readReps(text: string, { distance, running, what = 'Rep' }: Options): RepsText {
  const all = tokensOf(text).filter((tokens) => tokens.some((token) => /\d/.test(token.text)));
  const numbered = all.every((tokens, i) => tokens.length > 1 && counts(tokens[0]?.text, i + 1));
  const lines = numbered ? all.map((tokens) => tokens.slice(1)) : all;

  const listed: ListedTime[] = [];
  const reps: Splits[] = [];
  const errors: string[] = [];
  lines.forEach((line, r) => {
    const tokens = line.flatMap((token) =>
      splitAtCommas(token, plausibleTimes(distance / line.length)),
    );
    const every = distance / tokens.length;
    const times = tokens.map(({ text: typed, at }, i) => {
      const name = `${what} ${r + 1}, time ${i + 1}`;
      const window = plausibleTimes(running ? every * (i + 1) : every);
      const read = readTimeText(typed, name, window);
      return { ...read, error: read.error && `${name}: ${read.error}`, at };
    });
    listed.push(...times);
    const wrong = times.find(({ error }) => error !== null)?.error;
    if (wrong) errors.push(wrong);
    else
      attempt(
        every,
        times.flatMap(({ time }) => time ?? []),
        `${what} ${r + 1}`,
      );
  });
  return { text: { times: listed, leftOut: [] }, reps, errors };

  function attempt(every: number, times: readonly Hundredths[], name: string): void {
    try {
      reps.push(running ? splitsFromCumulative(every, times) : splitsFromLaps(every, times));
    } catch (error) {
      if (!isPacingError(error)) throw error;
      errors.push(`${name}: ${error.message}`);
    }
  }
}

/** Whether a word is the line's number: `3`, `3.` or `#3`. */
const counts = (word: string | undefined, n: number): boolean =>
  word !== undefined && new RegExp(`^#?${n}[.:)]?$`).test(word);
