import { expect, test } from 'vitest';
import { spanOf } from '../../../packages/core/src/time/span.js';
import { codeOf, refusal } from '../../refusal.js';

test('takes zero and more', () => {
  expect(spanOf(0, 'The rest')).toBe(0);
  expect(spanOf(2000, 'The rest')).toBe(2000);
});

test('refuses less, and what is no time', () => {
  expect(refusal(() => spanOf(-1, 'The rest'))).toMatchObject({
    code: 'out-of-range',
    message: 'The rest must be zero or more.',
    input: -1,
  });
  expect(codeOf(() => spanOf(0.5, 'The rest'))).toBe('not-a-time');
});
