import { convertDistance, type Unit } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeOf, refusal } from '../../refusal.js';

test.each([
  [1, 'yd', 'm', 0.9144],
  [1650, 'yd', 'm', 1508.76],
  [0.9144, 'm', 'yd', 1],
  [1508.76, 'm', 'yd', 1650],
  [0, 'm', 'yd', 0],
  [-0, 'm', 'yd', 0],
  [-100, 'yd', 'm', -91.44],
] as const)('%d %s in %s', (distance, from, to, wanted) => {
  expect(convertDistance(distance, from, to)).toBe(wanted);
});

test('a distance in its own unit is left alone', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (distance) => {
      expect(convertDistance(distance, 'yd', 'yd')).toBe(distance + 0);
    }),
  );
});

test('whole yards come back through metres as they were', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e9 }), (yards) => {
      const back = convertDistance(convertDistance(yards, 'yd', 'm'), 'm', 'yd');
      expect(Math.abs(back / yards - 1)).toBeLessThan(1e-15);
    }),
  );
});

test('the ratio is exactly 1143 to 1250', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), (n) => {
      expect(convertDistance(n * 1250, 'yd', 'm')).toBe(n * 1143);
      expect(convertDistance(n * 1143, 'm', 'yd')).toBe(n * 1250);
    }),
  );
});

describe('refuses', () => {
  test.each([Number.NaN, Infinity, 1e13, -1e13, '100', null])('a distance of %s', (distance) => {
    expect(codeOf(() => convertDistance(distance as number, 'm', 'yd'))).toBe('out-of-range');
  });

  test.each(['ft', 'M', '', null, undefined])('a unit of %s, from or to', (unit) => {
    expect(codeOf(() => convertDistance(1, unit as Unit, 'm'))).toBe('unknown-choice');
    expect(codeOf(() => convertDistance(1, 'm', unit as Unit))).toBe('unknown-choice');
  });

  test('with a sentence', () => {
    expect(refusal(() => convertDistance('1' as never, 'm', 'yd')).message).toMatch(
      /^The distance must be a number/,
    );
    expect(refusal(() => convertDistance(1, 'ft' as Unit, 'm')).message).toMatch(/^The unit must/);
    expect(refusal(() => convertDistance(1, 'm', 'ft' as Unit)).message).toBe(
      'The unit must be one of "m", "yd", not "ft".',
    );
  });
});
