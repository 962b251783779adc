import { type CautionCode, hundredths, type RepReading } from 'backhalf';
import { expect, test } from 'vitest';
import { setCautions } from '../../../packages/core/src/sets/set-cautions.js';

const rep = (rest: number | null = 2500, interpolated = false): RepReading => ({
  time: hundredths(6500),
  halves: { first: hundredths(3150), second: hundredths(3350), interpolated },
  comparison: null,
  rest: rest === null ? null : hundredths(rest),
});
const unmarked: RepReading = { ...rep(), halves: null };
const calm = { average: 6500, spread: 50, fade: 20, rest: 2500 };
const of = (count: number, one = rep()) => Array<RepReading>(count).fill(one);

test('a plain set of eight raises none', () => {
  expect(setCautions(of(8), calm)).toEqual([]);
});

test.each<[string, RepReading[], Partial<typeof calm> | { rest: null }, CautionCode, string]>([
  [
    'seven reps',
    of(7),
    {},
    'few-reps',
    'Only 7 reps: a reading set has about twenty, so that tiredness shows.',
  ],
  [
    'one rep',
    of(1),
    {},
    'few-reps',
    'Only 1 rep: a reading set has about twenty, so that tiredness shows.',
  ],
  [
    'more rest than half the swim',
    of(8),
    { rest: 3251 },
    'long-rest',
    'The rest is more than half as long as the swim: each rep starts fresh, which flatters both halves.',
  ],
  [
    'no rest known',
    of(8, rep(null)),
    { rest: null },
    'rest-unknown',
    'Neither send-off nor rest is known: the longer the rest, the more the reps flatter.',
  ],
  [
    'a missed send-off',
    [...of(8), rep(-1)],
    {},
    'missed-send-off',
    '1 of 9 reps took longer than the send-off: the set was not swum as set.',
  ],
  [
    'reps without marks',
    [...of(8), unmarked, unmarked],
    {},
    'no-halfway-mark',
    '2 of 10 reps have no mark at or before halfway and tell nothing about the second half.',
  ],
  [
    'a half read off a line',
    [...of(8), rep(2500, true)],
    {},
    'halves-interpolated',
    'Halfway was read off a straight line between two marks; a split taken at halfway is better.',
  ],
  [
    'scatter over 2 %',
    of(8),
    { spread: 130.1 },
    'reps-uneven',
    'The reps vary by more than 2 %: no single pace describes them well.',
  ],
  [
    'a fade over 2 %',
    of(8),
    { fade: 131 },
    'fading',
    'The last third was more than 2 % slower than the first: the mean is faster than where it ended.',
  ],
])('%s', (_, reps, facts, code, message) => {
  expect(setCautions(reps, { ...calm, ...facts })).toEqual([{ code, message }]);
});

test.each([
  ['rest of half the swim', { rest: 3250 }],
  ['scatter of 2 %', { spread: 130 }],
  ['a fade of 2 %', { fade: 130 }],
  ['getting faster', { fade: -600 }],
  ['no rest at all', { rest: 0 }],
])('%s is no reason for one', (_, facts) => {
  expect(setCautions(of(8), { ...calm, ...facts })).toEqual([]);
});

test('a rest of just nothing is no missed send-off', () => {
  expect(setCautions(of(8, rep(0)), calm)).toEqual([]);
});
