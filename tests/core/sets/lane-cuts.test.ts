import { expect, test } from 'vitest';
import { bestEnds, fewestGroups } from '../../../packages/core/src/sets/lane-cuts.js';

const atMost = (most: number) => (end: number) => Math.max(0, end - most);
const free = { count: 7, earliest: atMost(7), cost: () => 0 };

test('the fewest groups are as full as allowed', () => {
  expect(fewestGroups({ count: 7, earliest: atMost(3) })).toBe(3);
  expect(fewestGroups({ count: 0, earliest: atMost(3) })).toBe(0);
});

test('free of costs, groups are even, the last ones smaller', () => {
  expect(bestEnds(free, 1)).toEqual([7]);
  expect(bestEnds(free, 3)).toEqual([3, 5, 7]);
  expect(bestEnds(free, 7)).toEqual([1, 2, 3, 4, 5, 6, 7]);
});

test('a group never starts before it may', () => {
  expect(bestEnds({ ...free, earliest: (end) => (end === 7 ? 6 : 0) }, 2)).toEqual([6, 7]);
});

test('costs come before evenness', () => {
  const cost = (start: number, end: number) => (start < 1 && end > 1 ? 1 : 0);
  expect(bestEnds({ ...free, cost }, 2)).toEqual([1, 7]);
});
