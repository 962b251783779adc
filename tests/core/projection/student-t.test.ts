import { describe, expect, test } from 'vitest';
import { studentT } from '../../../packages/core/src/projection/student-t.js';

// The table of outside values is in tests/reference/student-t.test.ts.
describe('studentT', () => {
  test.each([0.5000001, 0.6, 0.75, 0.9, 0.975, 0.9999])('one degree of freedom: tan at %d', (p) => {
    expect(relative(studentT(p, 1), Math.tan(Math.PI * (p - 0.5)))).toBeLessThan(1e-9);
  });

  test.each([0.6, 0.9, 0.975, 0.9999])('two degrees of freedom: closed form at %d', (p) => {
    const within = 2 * p - 1;
    expect(relative(studentT(p, 2), within * Math.sqrt(2 / (1 - within * within)))).toBeLessThan(
      1e-9,
    );
  });

  test('is odd about one half', () => {
    expect(studentT(0.5, 7)).toBe(0);
    expect(studentT(0.025, 7)).toBe(-studentT(0.975, 7));
  });

  test('comes near the normal quantile where there are many degrees of freedom', () => {
    expect(studentT(0.975, 100_000)).toBeCloseTo(1.959964, 4); // from memory: 1.959964
  });

  test.each([
    [3, 0.95],
    [6, 0.995],
    [7, 0.8],
    [25, 0.975],
  ])(
    'the density up to it sums to the probability, %d degrees of freedom, %d',
    (df, probability) => {
      expect(0.5 + areaTo(studentT(probability, df), df)).toBeCloseTo(probability, 10);
    },
  );
});

const relative = (actual: number, wanted: number) => Math.abs(actual / wanted - 1);

/** The area under the density from 0, by Simpson's rule: another road to the same probability. */
function areaTo(t: number, df: number): number {
  const density = (x: number) => (1 + (x * x) / df) ** (-(df + 1) / 2);
  const simpson = (end: number, of: (x: number) => number, steps = 20_000) => {
    const h = end / steps;
    let sum = of(0) + of(end);
    for (let i = 1; i < steps; i++) sum += (i % 2 === 0 ? 2 : 4) * of(i * h);
    return (sum * h) / 3;
  };
  // The whole half line, by x = tan u.
  const whole = simpson(Math.PI / 2 - 1e-9, (u) => density(Math.tan(u)) / Math.cos(u) ** 2);
  return (0.5 * simpson(t, density)) / whole;
}
