import { hundredths, splitsFromLaps } from 'backhalf';
import { expect, test } from 'vitest';
import { shapeOf } from '../../../packages/core/src/plan/race-shape.js';
import { codeOf } from '../../refusal.js';

const profile = splitsFromLaps(50, [2810, 3045].map(hundredths));

test('reads each kind of shape', () => {
  expect(shapeOf('even', 400)).toEqual({ kind: 'even' });
  expect(shapeOf({ secondHalf: -200 }, 400)).toEqual({ kind: 'halves', secondHalf: -200 });
  expect(shapeOf({ profile }, 400)).toEqual({ kind: 'profile', swim: profile });
  expect(shapeOf({ championship: 'W' }, 400)).toMatchObject({
    kind: 'championship',
    sex: 'W',
    distance: 400,
  });
});

test.each([
  ['another name', 'negative', 'unknown-choice'],
  ['none', undefined, 'unknown-choice'],
  ['null', null, 'wrong-shape'],
  ['two at once', { secondHalf: 0, profile }, 'unknown-choice'],
  ['nothing in it', {}, 'unknown-choice'],
  ['a half that is no time', { secondHalf: 0.5 }, 'not-a-time'],
  ['a profile without marks', { profile: {} }, 'wrong-shape'],
  ['another championship', { championship: 'X' }, 'unknown-choice'],
])('refuses %s', (_, shape, code) => {
  expect(codeOf(() => shapeOf(shape, 400))).toBe(code);
});
