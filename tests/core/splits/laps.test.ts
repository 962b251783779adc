import { hundredths, lapsOf, splitsFromLaps, splitsFromMarks } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, swim, unevenSwim } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const sum = (times: readonly number[]) => times.reduce((a, b) => a + b, 0);
const four = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));

test('from mark to mark', () => {
  expect(lapsOf(four)).toEqual([2810, 3045, 3120, 3055]);
});

test('laps of whatever marks add up to the swim, exactly', () => {
  fc.assert(
    fc.property(fc.oneof(swim, unevenSwim), (given) => {
      expect(sum(lapsOf(given))).toBe(given.marks.at(-1)?.time);
    }),
  );
});

test.each([
  [50, [2810, 3045, 3120, 3055]],
  [100, [5855, 6175]],
  [200, [12_030]],
])('every %d: %j', (every, laps) => {
  expect(lapsOf(four, every)).toEqual(laps);
});

test('longer laps are sums of the short ones, in any pool', () => {
  const length = fc.constantFrom(20, 25, 50, 100 / 3);
  const count = fc.integer({ min: 1, max: 12 });
  fc.assert(
    fc.property(length, count, fc.integer({ min: 1, max: 5 }), lap, (every, laps, each, time) => {
      const short = Array.from({ length: laps * each }, (_, i) => hundredths(time + i));
      const long = lapsOf(splitsFromLaps(every, short), every * each);
      expect(long).toEqual(
        Array.from({ length: laps }, (_, i) => sum(short.slice(i * each, (i + 1) * each))),
      );
    }),
  );
});

test('marks between the laps do no harm', () => {
  const marks = [
    { distance: 37.5, time: 2300 },
    { distance: 50, time: 3150 },
    { distance: 85, time: 5400 },
    { distance: 100, time: 6500 },
  ].map(({ distance, time }) => ({ distance, time: hundredths(time) }));
  expect(lapsOf(splitsFromMarks(marks), 50)).toEqual([3150, 3350]);
});

test('one lap of 33⅓ is a lap of 33⅓', () => {
  expect(lapsOf(splitsFromLaps(100 / 3, [hundredths(2200)]), 100 / 3)).toEqual([2200]);
});

describe('no mark there', () => {
  test.each([
    [25, 'The swim has no mark at 25; choose laps that end at its marks.'],
    [75, 'The swim has no mark at 75; choose laps that end at its marks.'],
    [
      150,
      'The swim is 200 long, no whole number of laps of 150; choose laps that end at its marks.',
    ],
    [
      400,
      'The swim is 200 long, no whole number of laps of 400; choose laps that end at its marks.',
    ],
  ])('laps of %d', (every, message) => {
    expect(refusal(() => lapsOf(four, every))).toMatchObject({ code: 'no-mark-there', message });
  });
});

test.each([0, -50, Number.NaN, Infinity, '50', null])('refuses laps of %s', (every) => {
  expect(refusal(() => lapsOf(four, every as number))).toMatchObject({
    code: 'out-of-range',
    message: expect.stringMatching(/^The distance of a lap must be a number above 0/),
  });
});

test.each([null, [], { marks: 'x' }])('%j is no swim', (value) => {
  expect(codeOf(() => lapsOf(value as never))).toBe('wrong-shape');
});
