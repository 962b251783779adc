import fc from 'fast-check';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import {
  deviationOf,
  greatestOf,
  leastOf,
  meanOf,
  sumOf,
} from '../../packages/core/src/statistics.js';
import { lap } from '../generators.js';

const laps = fc.array(lap, { minLength: 2, maxLength: 60 });

test('mean and deviation agree with another library', () => {
  fc.assert(
    fc.property(laps, (values) => {
      expect(meanOf(values)).toBeCloseTo(mean(values), 9);
      expect(deviationOf(values)).toBeCloseTo(sampleStandardDeviation(values), 7);
    }),
  );
});

test('the deviation of small differences far from zero keeps its digits', () => {
  expect(deviationOf([1e9 + 1, 1e9 + 2, 1e9 + 3])).toBe(1);
});

test('one value has no deviation', () => {
  expect(deviationOf([3350])).toBe(0);
});

test('nothing adds up to nothing', () => {
  expect(sumOf([])).toBe(0);
});

test('least and greatest of a long list', () => {
  const values = Array.from({ length: 500_000 }, (_, i) => (i * 7919) % 500_000);
  expect([leastOf(values), greatestOf(values)]).toEqual([0, 499_999]);
});
