import fc from 'fast-check';
import { expect, test } from 'vitest';
import { show } from '../../packages/core/src/show.js';
import { anything } from '../generators.js';

const revoked = Proxy.revocable([], {});
revoked.revoke();

test.each<[string, unknown, string]>([
  ['text', '1:75', '"1:75"'],
  ['text of 40 characters', 'x'.repeat(40), `"${'x'.repeat(40)}"`],
  ['text of 41', 'x'.repeat(41), `"${'x'.repeat(40)}…"`],
  ['text of several lines', '31.5\r\n33.5\u2028', '"31.5 33.5 "'],
  ['text that turns itself around', '1\u202e5', '"1 5"'],
  ['text cut within a character', `${'x'.repeat(39)}🏊`, `"${'x'.repeat(39)} …"`],
  ['a number', 33.5, '33.5'],
  ['a number below zero, with a true minus', -5, '−5'],
  ['a tiny number below zero', -1e-7, '−1e−7'],
  ['no number', Number.NaN, 'NaN'],
  ['too much', -Infinity, '−Infinity'],
  ['nothing', undefined, 'undefined'],
  ['null', null, 'null'],
  ['a truth value', true, 'true'],
  ['a big integer', 10n, 'a big integer'],
  ['a symbol', Symbol('x'), 'a symbol'],
  ['a function', () => 1, 'a function'],
  ['a list', [1, 2], 'a list'],
  ['an object', { a: 1 }, 'an object'],
  ['a proxy that was revoked', revoked.proxy, 'an object'],
])('%s', (_, value, shown) => {
  expect(show(value)).toBe(shown);
});

test('anything is shown in one short line', () => {
  fc.assert(
    fc.property(anything, (value) => {
      const shown = show(value);
      expect(shown.length).toBeLessThan(45);
      expect(shown).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    }),
  );
});
