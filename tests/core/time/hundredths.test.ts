import { hundredths } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  differenceOf,
  nearestHundredth,
  timeOf,
} from '../../../packages/core/src/time/hundredths.js';
import { codeOf, refusal } from '../../refusal.js';

const EXACT = Number.MAX_SAFE_INTEGER;

describe('hundredths', () => {
  test.each([0, 1, -1, 6530, EXACT, -EXACT])('takes %d as it is', (n) => {
    expect(hundredths(n)).toBe(n);
  });

  test('turns −0 into 0', () => {
    expect(Object.is(hundredths(-0), 0)).toBe(true);
  });

  test.each([EXACT + 1, -EXACT - 1, 1e300, Infinity, -Infinity])('%d is too large', (n) => {
    expect(refusal(() => hundredths(n))).toMatchObject({
      code: 'too-large',
      message: 'A time this large is no longer exact; use a smaller one.',
    });
  });

  test.each([33.5, 5e-324, Number.NaN, '3350', null, undefined, 3350n, [3350]])(
    '%s is no whole number',
    (n) => {
      expect(codeOf(() => hundredths(n as number))).toBe('not-a-time');
    },
  );

  test('shows what it refused', () => {
    expect(refusal(() => hundredths(-33.5))).toMatchObject({
      message: 'A time must be a whole number of hundredths of a second, not −33.5.',
      input: -33.5,
    });
  });
});

describe('nearestHundredth', () => {
  test.each([
    [0.49, 0],
    [0.5, 1],
    [1.5, 2],
    [2.5, 3],
    [-0.5, -1],
    [-2.5, -3],
    [-0.49, 0],
    [-0, 0],
    [0.499_999_999_999_999_94, 0],
  ])('%d rounds to %d', (n, rounded) => {
    expect(nearestHundredth(n)).toBe(rounded);
  });

  test('mirrors, so that swapped swims differ in sign only', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e15, max: 1e15, noNaN: true }), (n) => {
        expect(nearestHundredth(-n) + nearestHundredth(n)).toBe(0);
      }),
    );
  });

  test('refuses what overflowed', () => {
    expect(codeOf(() => nearestHundredth(1e300))).toBe('too-large');
    expect(codeOf(() => nearestHundredth(Infinity))).toBe('too-large');
    expect(codeOf(() => nearestHundredth(Number.NaN))).toBe('not-a-time');
  });
});

describe('timeOf', () => {
  test.each([1, EXACT])('takes %d', (n) => {
    expect(timeOf(n, 'Lap 3')).toBe(n);
  });

  test.each([0, -0, -1, 0.5, EXACT + 1, Number.NaN, Infinity, '1', null, undefined, [1]])(
    'refuses %s',
    (n) => {
      expect(refusal(() => timeOf(n, 'Lap 3'))).toMatchObject({ code: 'not-a-time', input: n });
    },
  );

  test('says which', () => {
    expect(refusal(() => timeOf(0, 'Lap 3')).message).toBe(
      'Lap 3 must be a whole number of hundredths of a second above zero, not 0.',
    );
  });
});

describe('differenceOf', () => {
  test.each([0, 1, -1, EXACT, -EXACT])('takes %d', (n) => {
    expect(differenceOf(n, 'The rest')).toBe(n);
  });

  test('turns −0 into 0', () => {
    expect(Object.is(differenceOf(-0, 'The rest'), 0)).toBe(true);
  });

  test.each([0.5, EXACT + 1, Number.NaN, -Infinity, '1', null, undefined, {}])(
    'refuses %s',
    (n) => {
      expect(codeOf(() => differenceOf(n, 'The rest'))).toBe('not-a-time');
    },
  );

  test('says which', () => {
    expect(refusal(() => differenceOf('x', 'The rest')).message).toBe(
      'The rest must be a whole number of hundredths of a second, not "x".',
    );
  });
});
