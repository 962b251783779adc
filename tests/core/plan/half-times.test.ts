import fc from 'fast-check';
import { expect, test } from 'vitest';
import { halfTimes } from '../../../packages/core/src/plan/half-times.js';
import { difference, lap } from '../../generators.js';

test('halves add up and differ as asked, or by a hundredth less', () => {
  fc.assert(
    fc.property(lap, difference, (time, secondHalf) => {
      const { first, second } = halfTimes(time, secondHalf);
      expect(first + second).toBe(time);
      const odd = Math.abs(time - secondHalf) % 2;
      expect(second - first).toBe(secondHalf - odd);
    }),
  );
});

test('the first half takes the odd hundredth', () => {
  expect(halfTimes(6701, 0)).toEqual({ first: 3351, second: 3350 });
  expect(halfTimes(6700, -1)).toEqual({ first: 3351, second: 3349 });
  expect(halfTimes(6700, 1)).toEqual({ first: 3350, second: 3350 });
});
