import { trackRecord } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

// Where the figures come from, and whether ranges hold, is in tests/reference/track-record.
describe('trackRecord', () => {
  test('fitted methods stand without an exponent; each given exponent adds its rows', () => {
    const fitted = trackRecord([]);
    expect(
      fitted.map(({ method, from, to, exponent }) => [method, from.join('+'), to, exponent]),
    ).toEqual([
      ['critical-speed', '200+400', 800, null],
      ['critical-speed', '200+400', 1500, null],
      ['power-law', '200+400', 800, null],
      ['power-law', '200+400', 1500, null],
    ]);
    const rows = trackRecord([1.04, 1.06]);
    expect(rows).toHaveLength(fitted.length + 2 * 5);
    expect(rows.filter(({ exponent }) => exponent === 1.06)).toHaveLength(5);
  });

  test('a larger exponent promises slower times, and moves the range against it', () => {
    const [slow, fast] = [1.06, 1.04].map((k) => trackRecord([k]).find(({ to }) => to === 1500)!);
    const growth = (1500 / slow!.from[0]!) ** 0.02;
    expect((1 + slow!.bias) / (1 + fast!.bias)).toBeCloseTo(growth, 12);
    expect(fast!.range.low / slow!.range.low).toBeCloseTo(growth, 12);
    expect(fast!.range.high / slow!.range.high).toBeCloseTo(growth, 12);
    expect(slow!.spread).toBe(fast!.spread);
  });

  test('the range is centred on the bias: t times the spread, for one further swim', () => {
    for (const { bias, range, spread, swims } of trackRecord([1.04])) {
      expect(Math.sqrt(range.low * range.high)).toBeCloseTo(1 / (1 + bias), 12);
      const reach = Math.log(range.high / range.low) / 2 / spread / Math.sqrt(1 + 1 / swims);
      // Student's t for 0.95 with one degree of freedom less than swims, from printed tables.
      const printed = { 13: 1.782, 14: 1.771, 16: 1.753, 73: 1.666, 81: 1.664, 102: 1.66 }[swims]!;
      expect(reach).toBeCloseTo(printed, 3);
    }
  });

  test('an exponent right on the mean has no bias, and no −0', () => {
    const row = trackRecord([1.04267]).find(({ from, to }) => from[0] === 400 && to === 1500)!;
    expect(row.bias).toBe(0);
    expect(row.who).toBe('men');
  });

  test('refuses what is no list of exponents', () => {
    expect(codeOf(() => trackRecord(1.04 as never))).toBe('wrong-shape');
    expect(codeOf(() => trackRecord([0.99]))).toBe('out-of-range');
    expect(codeOf(() => trackRecord([2.01]))).toBe('out-of-range');
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    const list = fc.array(nearly(fc.double({ min: 1, max: 2, noNaN: true })), { maxLength: 3 });
    fc.assert(fc.property(nearly(list), (exponents) => isSound(() => trackRecord(exponents))));
  });
});
