import { hundredths, LCM, planRace } from 'backhalf';
import { expect, test } from 'vitest';
import { planOf } from '../../../packages/core/src/plan/read-plan.js';
import { codeOf } from '../../refusal.js';

const plan = planRace({ pool: LCM, distance: 200, goal: hundredths(13_200), shape: 'even' });

test('a plan comes back from JSON as it was', () => {
  const { pool, marks, halves, checkpoints } = plan;
  expect(planOf(JSON.parse(JSON.stringify(plan)))).toEqual({ pool, marks, halves, checkpoints });
});

test('a plan of one length has no halves', () => {
  expect(planOf({ ...plan, halves: null }).halves).toBeNull();
});

test.each([
  ['no plan', undefined, 'wrong-shape'],
  ['no marks', { ...plan, marks: [] }, 'too-few-laps'],
  ['halves that are none', { ...plan, halves: { first: 6600 } }, 'not-a-time'],
  ['no halves', { ...plan, halves: undefined }, 'wrong-shape'],
  ['no pool', { ...plan, pool: {} }, 'out-of-range'],
  ['no checkpoints', { ...plan, checkpoints: 4 }, 'wrong-shape'],
])('refuses %s', (_, value, code) => {
  expect(codeOf(() => planOf(value))).toBe(code);
});
