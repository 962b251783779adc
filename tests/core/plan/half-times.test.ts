import { hundredths } from 'backhalf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkDifference, halfTimes } from '../../../packages/core/src/plan/half-times.js';
import { difference, lap } from '../../generators.js';
import { codeOf } from '../../refusal.js';

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

test('halves differ by a quarter of the whole and no more, either way', () => {
  const check = (secondHalf: number) => () => checkDifference(hundredths(secondHalf), 29_600);
  for (const most of [7400, -7400]) expect(check(most)).not.toThrow();
  for (const more of [7401, -7401, 14_800]) expect(codeOf(check(more))).toBe('out-of-range');
  expect(check(14_800)).toThrow(
    'not by its own time; +2:28.00 is more than a quarter of the whole',
  );
});
