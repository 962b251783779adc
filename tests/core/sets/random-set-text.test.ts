import { formatSet, isPacingError, safeParseSet } from 'backhalf';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { WORDS } from '../../../packages/core/src/sets/notation/words.js';
import { numbersFrom, runs, seed } from '../../random.js';

// Pieces that sets are made of, and pieces that break them.
const PIECES = [
  ...WORDS.keys(),
  ...' \n+,;:/#()[]{}-"\'→ſK２\u2028\ud83c',
  ...[
    '4 x ',
    '100',
    ' 50',
    ' on 1:30',
    ' r 15',
    ' :45',
    '1:30',
    '1-4',
    ' hold 1:05',
    '8x50',
    ' easy',
  ],
  ...[
    '3 rounds of:',
    'broken 200: ',
    '3 x (',
    ')',
    '// ',
    '= 400',
    '0',
    '105',
    '31,5',
    'breath',
    '1e9',
    '🏊',
  ],
];

const COUNT = Math.max(1_000_000, runs);
const next = numbersFrom(seed);
const pick = (count: number) => Math.floor(next() * count);
const text = () => {
  let typed = pick(2) === 0 ? '' : '4 x 100';
  for (let pieces = pick(7); pieces > 0; pieces -= 1) typed += PIECES[pick(PIECES.length)];
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

test(`${COUNT} random texts are read and written back, or refused with the place`, () => {
  let read = 0;
  for (let i = 0; i < COUNT; i += 1) {
    const typed = text();
    const result = safeParseSet(typed);
    if (result.ok) {
      read += 1;
      const written = formatSet(result.value);
      const again = safeParseSet(written);
      const stable = again.ok && formatSet(again.value) === written;
      if (!stable) expect.fail(JSON.stringify({ typed, written, again }));
    } else if (!isPacingError(result.error) || !placeIn(typed, result.error.position)) {
      expect.fail(JSON.stringify({ typed, result }));
    }
  }
  expect(read).toBeGreaterThan(COUNT / 20);
}, 0);

function placeIn(typed: string, position: number | undefined): boolean {
  return position !== undefined && position >= 0 && position <= typed.length;
}
