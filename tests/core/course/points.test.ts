import { hundredths, isPacingError, points, timeForPoints } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearly } from '../../generators.js';

const time = fc.integer({ min: 1000, max: 200_000 }).map(hundredths);
const code = (name: string) => expect.objectContaining({ name: 'PacingError', code: name });

describe('points', () => {
  test('twice the base time is worth 125 exactly, and the base 1000', () => {
    fc.assert(
      fc.property(time, (base) => {
        expect(points(hundredths(2 * base), base)).toBe(125);
        expect(points(base, base)).toBe(1000);
      }),
    );
  });

  // In floating point 1000 · (10.50 / 15.00)³ is 342.99999999999994.
  test('a whole number of points is not lost to a fraction', () => {
    expect(points(hundredths(1500), hundredths(1050))).toBe(343);
    expect(points(hundredths(1700), hundredths(1020))).toBe(216);
  });

  test('the fraction is dropped, never rounded', () => {
    expect(points(hundredths(5284), hundredths(4691))).toBe(699); // 699.69
  });

  test('a time below all sense is refused', () => {
    expect(() => points(hundredths(1), hundredths(9_000_000))).toThrow(code('too-large'));
    expect(() => points(hundredths(0), hundredths(4691))).toThrow(code('not-a-time'));
    expect(points(hundredths(9_000_000), hundredths(1))).toBe(0);
  });
});

describe('timeForPoints', () => {
  test('scores the points where some time does, and a hundredth less scores more', () => {
    fc.assert(
      fc.property(time, time, (swum, base) => {
        const worth = points(swum, base);
        fc.pre(worth > 0 && worth <= 1_000_000);
        const fastest = timeForPoints(worth, base);
        expect(points(fastest, base)).toBe(worth);
        expect(points(hundredths(fastest - 1), base)).toBeGreaterThan(worth);
      }),
    );
  });

  // Against 20.00, 20.00 scores 1000 and 20.01 scores 998.
  test('where no time scores exactly these, the next score above is met', () => {
    const base = hundredths(2000);
    expect(points(hundredths(2001), base)).toBe(998);
    expect(timeForPoints(999, base)).toBe(2000);
    expect(timeForPoints(998, base)).toBe(2001);
  });

  // 20.48 is a power of two in hundredths: the search for the slowest time starts at its very answer.
  test('a search that lands on the answer keeps it', () => {
    expect(timeForPoints(1000, hundredths(2048))).toBe(2048);
  });

  test('agrees with stepping through the times one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 3000 }),
        (b, wanted) => {
          const base = hundredths(b);
          let slowest = 10 * b;
          while (slowest > 0 && points(hundredths(slowest), base) < wanted) slowest -= 1;
          fc.pre(slowest > 0);
          const scored = points(hundredths(slowest), base);
          let fastest = slowest;
          while (fastest > 1 && points(hundredths(fastest - 1), base) === scored) fastest -= 1;
          expect(timeForPoints(wanted, base)).toBe(fastest);
        },
      ),
    );
  });

  test('points must be whole, and within reach', () => {
    const base = hundredths(4691);
    for (const wanted of [0, -1, 1.5, Number.NaN, 1e7]) {
      expect(() => timeForPoints(wanted, base)).toThrow(code('out-of-range'));
    }
    expect(() => timeForPoints(1001, hundredths(1))).toThrow(code('out-of-range'));
    expect(() => timeForPoints(1, hundredths(2 ** 53 - 1))).toThrow(code('too-large'));
  });
});

test('anything else is refused by a PacingError', () => {
  const whole = nearly(fc.maxSafeNat().map(hundredths));
  fc.assert(
    fc.property(whole, whole, (a, b) => {
      for (const call of [points, timeForPoints]) {
        try {
          expect(Number.isSafeInteger(call(a, b))).toBe(true);
        } catch (error) {
          if (!isPacingError(error)) throw error;
        }
      }
    }),
  );
});
