import { expect, test } from 'vitest';
import { championshipShape } from '../../../packages/core/src/plan/championship-shapes.js';

test.each([
  ['M', 50, 200],
  ['M', 200, 200],
  ['M', 282, 200],
  ['M', 283, 400],
  ['M', 457.2, 400],
  ['M', 800, 1500],
  ['M', 1508.76, 1500],
  ['W', 565, 400],
  ['W', 566, 800],
  ['W', 1500, 800],
] as const)('%s %d m: the shape of the %d is nearest by ratio', (sex, metres, distance) => {
  expect(championshipShape(sex, metres)).toMatchObject({ sex, distance });
});
