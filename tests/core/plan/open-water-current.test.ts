import { crossCurrent, hundredths, isPacingError, planOpenWater, readCurrent } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';

const code = (name: string) => expect.objectContaining({ name: 'PacingError', code: name });

describe('readCurrent', () => {
  test('equal times show no current and no cost', () => {
    fc.assert(
      fc.property(lap, (time) => {
        expect(readCurrent(500, time, time)).toMatchObject({ current: 0, cost: 0 });
      }),
    );
  });

  test('the sign is that of the way out', () => {
    expect(readCurrent(750, hundredths(66_000), hundredths(54_000)).current).toBeLessThan(0);
    expect(readCurrent(750, hundredths(54_000), hundredths(66_000)).current).toBeGreaterThan(0);
  });

  test('reads back what a plan took for granted, and its cost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 2, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (speed, current) => {
          const legs = [
            { distance: 1000, current },
            { distance: 1000, current: -current },
          ];
          const { rows, currentCost } = planOpenWater(legs, { speed });
          const reading = readCurrent(1000, rows[0]!.time, rows[1]!.time);
          expect(reading.speed).toBeCloseTo(speed, 4);
          expect(reading.current).toBeCloseTo(current, 4);
          expect(Math.abs(reading.cost - currentCost)).toBeLessThanOrEqual(2);
        },
      ),
    );
  });
});

describe('crossCurrent', () => {
  test('left and right are the same', () => {
    expect(crossCurrent(1.3, -0.5)).toEqual(crossCurrent(1.3, 0.5));
    expect(crossCurrent(1.3, 0)).toEqual({ heading: 0, groundSpeed: 1.3, driftPer100: 0 });
  });

  test('water as fast as the swimmer is no course', () => {
    expect(() => crossCurrent(1.25, 1.25)).toThrow(code('current-too-strong'));
    expect(() => crossCurrent(0, 0)).toThrow(code('out-of-range'));
  });
});

test('anything else is refused by a PacingError, and nothing is NaN', () => {
  const number = nearly(fc.double({ min: -5, max: 5, noNaN: true }));
  fc.assert(
    fc.property(number, nearly(lap), nearly(lap), number, (a, out, back, b) => {
      for (const call of [() => readCurrent(a, out, back), () => crossCurrent(a, b)]) {
        try {
          for (const n of Object.values(call())) expect(Number.isFinite(n)).toBe(true);
        } catch (error) {
          if (!isPacingError(error)) throw error;
        }
      }
    }),
  );
});
