import { hundredths, isPacingError, strokeMetrics, strokeRate } from 'backhalf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';

const code = (name: string) => expect.objectContaining({ name: 'PacingError', code: name });
const cycles = fc.integer({ min: 1, max: 4000 }).map((n) => n / 2);

test('three cycles in 4.50 s are 40 a minute', () => {
  expect(strokeRate(3, hundredths(450))).toBe(40);
});

test('yards are counted as the metres they are', () => {
  const yards = strokeMetrics({ distance: 25, unit: 'yd', time: hundredths(1500), cycles: 8 });
  const metres = strokeMetrics({ distance: 22.86, time: hundredths(1500), cycles: 8 });
  expect(yards).toEqual(metres);
  expect(yards.speed).toBeCloseTo(1.524, 12);
});

test('rate × distance per cycle is speed, and the index is speed × distance per cycle', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1500 }), lap, cycles, (distance, time, count) => {
      const swim = strokeMetrics({ distance, time, cycles: count });
      expect(swim.rate).toBeCloseTo(strokeRate(count, time), 6);
      expect((swim.rate * swim.perCycle) / 60 / swim.speed).toBeCloseTo(1, 9);
      expect(swim.index / (swim.speed * swim.perCycle)).toBeCloseTo(1, 9);
      expect(swim.speed).toBe(distance / (time / 100));
    }),
  );
});

test('no distance, no cycle, no unit: refused', () => {
  const swim = { distance: 50, time: hundredths(3000), cycles: 18 };
  expect(() => strokeMetrics({ ...swim, distance: 0 })).toThrow(code('out-of-range'));
  expect(() => strokeMetrics({ ...swim, cycles: 0 })).toThrow(code('out-of-range'));
  expect(() => strokeMetrics({ ...swim, unit: 'km' as 'm' })).toThrow(code('unknown-choice'));
  expect(() => strokeMetrics({ ...swim, time: hundredths(0) })).toThrow(code('not-a-time'));
  expect(() => strokeRate(0.4, hundredths(450))).toThrow(code('out-of-range'));
});

test('anything else is refused by a PacingError, and nothing is NaN', () => {
  const swim = fc.record({
    distance: nearly(fc.double({ min: 1, max: 1e6, noNaN: true })),
    unit: nearly(fc.constantFrom('m' as const, 'yd' as const)),
    time: nearly(lap),
    cycles: nearly(cycles),
  });
  fc.assert(
    fc.property(nearly(swim), nearly(cycles), nearly(lap), (counted, count, time) => {
      const calls = [() => strokeMetrics(counted), () => ({ rate: strokeRate(count, time) })];
      for (const call of calls) {
        try {
          for (const n of Object.values(call())) expect(Number.isFinite(n)).toBe(true);
        } catch (error) {
          if (!isPacingError(error)) throw error;
        }
      }
    }),
  );
});
