import { expect, test } from 'vitest';
import { bestGroups, OBJECTIVES } from '../../../packages/core/src/sets/lane-objective.js';

// Two pairs and one apart: by hand, in two lanes.
const paces = [6000, 6001, 6010, 6011, 6100];

test.each([
  ['largest-spread', 11],
  ['sum-of-spreads', 11],
  ['total-wait', 22],
  ['least-squares', 101],
] as const)('%s of four against one is %d', (objective, cost) => {
  expect(bestGroups(paces, { groups: 2, most: 5 }, objective)).toEqual({ ends: [4, 5], cost });
});

test('a cap moves the cut', () => {
  expect(bestGroups(paces, { groups: 2, most: 3 }, 'largest-spread')).toEqual({
    ends: [3, 5],
    cost: 89,
  });
});

test('every objective is on the list', () => {
  expect(OBJECTIVES).toHaveLength(4);
});
