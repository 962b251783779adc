import { formatTime, isPacingError, parseTime, safeParseTime, timeReadings } from 'backhalf';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { numbersFrom, runs, seed } from '../../random.js';

// Pieces a time is made of, and pieces that break one.
const PIECES = [
  ...'0123456789',
  ...':.,+-−\'"′″ sx½２：\u200b\u202e\n',
  '05',
  '59',
  '60',
  ':30',
  '.45',
  'NT',
  'sec',
  '🏊',
  '\ud83c',
];

const COUNT = Math.max(1_000_000, runs);
const next = numbersFrom(seed);
const pick = (count: number) => Math.floor(next() * count);
const text = () => {
  let typed = '';
  for (let pieces = pick(9); pieces > 0; pieces -= 1) typed += PIECES[pick(PIECES.length)];
  return typed;
};

// Most of the time would go into the stacks of errors that nobody prints.
const { stackTraceLimit } = Error;
beforeAll(() => {
  Error.stackTraceLimit = 0;
});
afterAll(() => {
  Error.stackTraceLimit = stackTraceLimit;
});

test(`${COUNT} random texts are read, or refused with the place`, () => {
  let read = 0;
  for (let i = 0; i < COUNT; i += 1) {
    const typed = text();
    const readings = timeReadings(typed);
    const result = safeParseTime(typed);
    const fine = result.ok
      ? readings.length === 1 && readings[0] === result.value && Number.isSafeInteger(result.value)
      : isPacingError(result.error) &&
        (result.error.code === 'time-ambiguous'
          ? readings.length > 1 && new Set(readings).size === readings.length
          : readings.length === 0 && placeIn(typed, result.error.position));
    if (!fine) expect.fail(JSON.stringify({ typed, readings, result }));
    if (result.ok && parseTime(formatTime(result.value)) !== result.value) {
      expect.fail(`${JSON.stringify(typed)} is read, but not read back`);
    }
    read += result.ok ? 1 : 0;
  }
  expect(read).toBeGreaterThan(COUNT / 100);
}, 0);

function placeIn(typed: string, position: number | undefined): boolean {
  return position !== undefined && position >= 0 && position <= typed.length;
}
