import { expect, test } from 'vitest';
import { cautionsWhere } from '../../packages/core/src/caution.js';

test('only the cautions that hold, in the order given', () => {
  expect(
    cautionsWhere(
      [true, 'fading', 'It fades.'],
      [false, 'few-reps', 'Only one.'],
      [true, 'long-rest', 'It rests.'],
    ),
  ).toEqual([
    { code: 'fading', message: 'It fades.' },
    { code: 'long-rest', message: 'It rests.' },
  ]);
});
