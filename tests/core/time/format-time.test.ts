import { formatTime, hundredths, parseTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { difference } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const format = (n: number, options?: Parameters<typeof formatTime>[1]) =>
  formatTime(hundredths(n), options);

test.each([
  [0, '0.00'],
  [7, '0.07'],
  [99, '0.99'],
  [100, '0:01.00'],
  [530, '0:05.30'],
  [999, '0:09.99'],
  [1000, '10.00'],
  [3350, '33.50'],
  [5999, '59.99'],
  [6000, '1:00.00'],
  [6530, '1:05.30'],
  [100_660, '16:46.60'],
  [359_999, '59:59.99'],
  [360_000, '1:00:00.00'],
  [372_345, '1:02:03.45'],
  [36_000_000, '100:00:00.00'],
  [Number.MAX_SAFE_INTEGER, '25019997929:50:09.91'],
])('%d is written %s', (n, text) => {
  expect(format(n)).toBe(text);
});

describe('a difference', () => {
  test.each([
    [-83, '−0.83'],
    [-530, '−5.30'],
    [-6530, '−1:05.30'],
    [320, '0:03.20'],
  ])('%d is written %s, the minus a true one', (n, text) => {
    expect(format(n)).toBe(text);
  });

  test.each([
    [320, '+3.20'],
    [-320, '−3.20'],
    [6530, '+1:05.30'],
    [0, '0.00'],
  ])('%d is written %s where a sign is wanted', (n, text) => {
    expect(format(n, { signed: true })).toBe(text);
  });
});

describe('fewer decimals', () => {
  test.each([
    [6530, 1, '1:05.3'],
    [6535, 1, '1:05.4'],
    [6534, 1, '1:05.3'],
    [-6535, 1, '−1:05.4'],
    [530, 1, '5.3'],
    [5995, 1, '1:00.0'],
    [359_995, 1, '1:00:00.0'],
    [6549, 0, '1:05'],
    [6550, 0, '1:06'],
    [530, 0, '5'],
    [5950, 0, '1:00'],
    [4, 1, '0.0'],
    [49, 0, '0'],
  ] as const)('%d with %d is %s', (n, decimals, text) => {
    expect(format(n, { decimals })).toBe(text);
  });

  test.each([1, 0] as const)('what rounds to nothing has no sign (%d)', (decimals) => {
    expect(format(-4, { decimals, signed: true })).toMatch(/^0/);
    expect(format(4, { decimals, signed: true })).toMatch(/^0/);
  });

  test('two are the default', () => {
    expect(format(6530, { decimals: 2 })).toBe(format(6530));
  });
});

test('a difference and its mirror are written alike but for the sign', () => {
  fc.assert(
    fc.property(difference, fc.constantFrom(0, 1, 2), (t, decimals) => {
      const [plus, minus] = [t, -t].map((n) => format(n, { decimals, signed: true }));
      expect(minus).toBe(plus?.replace(/[+−]/, (sign) => (sign === '+' ? '−' : '+')));
    }),
  );
});

test('parseTime reads a difference back, signed or not', () => {
  fc.assert(
    fc.property(difference, fc.boolean(), (t, signed) => {
      expect(parseTime(formatTime(t, { signed }))).toBe(t);
    }),
  );
});

test('parseTime reads back the longest time it takes', () => {
  const longest = hundredths(999 * 360_000 + 359_999);
  expect(parseTime(formatTime(longest))).toBe(longest);
});

describe('refuses', () => {
  test.each([0.5, Number.NaN, Infinity, '33.50', undefined, null])('%s for a time', (n) => {
    expect(codeOf(() => formatTime(n as never))).toBe('not-a-time');
  });

  test.each([3, -1, 0.5, '1', null, [1], { toString: () => '1' }])('%j decimals', (decimals) => {
    expect(codeOf(() => format(1, { decimals: decimals as never }))).toBe('unknown-choice');
  });

  test('options that are none', () => {
    expect(codeOf(() => format(1, null as never))).toBe('wrong-shape');
  });

  test('with a sentence', () => {
    expect(refusal(() => formatTime(0.5 as never)).message).toMatch(/^The time must be/);
    expect(refusal(() => format(1, 5 as never)).message).toMatch(/^The options must be an object/);
    expect(refusal(() => format(1, { decimals: 3 as never })).message).toBe(
      'The decimals must be one of 0, 1, 2, not 3.',
    );
  });
});
