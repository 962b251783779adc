import { type Hundredths, hundredths, officialTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const official = (...watches: number[]) => officialTime(watches as Hundredths[]);

test('one watch is taken as it stands', () => {
  fc.assert(fc.property(lap, (watch) => official(watch) === watch));
});

test('of two watches the mean, its third decimal dropped', () => {
  fc.assert(
    fc.property(lap, lap, (a, b) => {
      expect(official(a, b)).toBe(Math.floor((a + b) / 2));
    }),
  );
});

test('of three watches the time two agree on', () => {
  fc.assert(
    fc.property(lap, lap, (agreed, other) => {
      expect(official(agreed, other, agreed)).toBe(agreed);
    }),
  );
});

test('of three watches the middle one, in whatever order they are read', () => {
  fc.assert(
    fc.property(fc.tuple(lap, lap, lap), ([a, b, c]) => {
      const middle = a + b + c - Math.min(a, b, c) - Math.max(a, b, c);
      for (const order of [
        [a, b, c],
        [a, c, b],
        [b, a, c],
        [b, c, a],
        [c, a, b],
        [c, b, a],
      ]) {
        expect(official(...order)).toBe(middle);
      }
    }),
  );
});

test('two watches far apart keep every digit', () => {
  const most = Number.MAX_SAFE_INTEGER;
  expect(official(most, most - 2)).toBe(most - 1);
});

test('the list that was given keeps its order', () => {
  const watches = [6730, 6712, 6715].map(hundredths);
  officialTime(watches);
  expect(watches).toEqual([6730, 6712, 6715]);
});

describe('refuses', () => {
  test.each([[[]], [[1, 2, 3, 4]]])('%j', (watches) => {
    expect(codeOf(() => official(...watches))).toBe('out-of-range');
  });

  test.each([0, -6712, 67.12, Number.NaN, '6712', null])('a watch that shows %s', (watch) => {
    expect(refusal(() => official(6712, watch as number))).toMatchObject({
      code: 'not-a-time',
      message: expect.stringMatching(/^Watch 2 must be/),
    });
  });

  test('what is no list', () => {
    expect(refusal(() => officialTime(6712 as never))).toMatchObject({
      code: 'wrong-shape',
      message: 'The watches must be a list, not 6712.',
    });
  });

  test('with a sentence', () => {
    expect(refusal(() => official()).message).toBe(
      'An official time takes one to three watches, not 0.',
    );
  });
});
