import { fromSeconds, hundredths, toSeconds } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { difference } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

describe('fromSeconds', () => {
  test.each([
    [0, 0],
    [-0, 0],
    [33.5, 3350],
    [65.3, 6530],
    [0.01, 1],
    [0.004, 0],
    [1e-7, 0],
    [5e-324, 0],
    [1e10, 1e12],
    [90_071_992_547_409.9, 9_007_199_254_740_990],
  ])('%d s are %d', (seconds, time) => {
    expect(fromSeconds(seconds)).toBe(time);
  });

  test.each([
    [0.005, 1],
    [1.005, 101],
    [1.115, 112],
    [2.675, 268],
    [8.575, 858],
    [-1.005, -101],
    [1.004999, 100],
  ])('%d s, a tie as written, go to %d', (seconds, time) => {
    expect(fromSeconds(seconds)).toBe(time);
  });

  test('a decimal is rounded as its digits say', () => {
    const digits = fc.integer({ min: -10_000_000, max: 10_000_000 });
    fc.assert(
      fc.property(digits, (thousandths) => {
        const written = Math.abs(thousandths);
        const rounded = Math.floor(written / 10) + (written % 10 >= 5 ? 1 : 0);
        expect(fromSeconds(thousandths / 1000)).toBe(thousandths < 0 ? 0 - rounded : rounded);
      }),
    );
  });

  test.each([Number.NaN, Infinity, -Infinity, '65.3', null, undefined, 65n])('refuses %s', (s) => {
    expect(refusal(() => fromSeconds(s as number))).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^Seconds must be a number/),
    });
  });

  test.each([1e14, -1e14, 1e21, 1.7e308])('%d s are too large to be exact', (s) => {
    expect(codeOf(() => fromSeconds(s))).toBe('too-large');
  });
});

describe('toSeconds', () => {
  test.each([
    [6530, 65.3],
    [-83, -0.83],
    [0, 0],
  ])('%d is %d s', (time, seconds) => {
    expect(toSeconds(hundredths(time))).toBe(seconds);
  });

  test('fromSeconds takes it back', () => {
    fc.assert(fc.property(difference, (time) => fromSeconds(toSeconds(time)) === time));
  });

  test.each([0.5, Number.NaN, '6530', null])('refuses %s', (t) => {
    expect(refusal(() => toSeconds(t as never))).toMatchObject({
      code: 'not-a-time',
      message: expect.stringMatching(/^The time must be/),
    });
  });
});
