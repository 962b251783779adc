import fc from 'fast-check';
import { linearRegression, linearRegressionLine, rSquared } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { fitLine, intervalOf } from '../../../packages/core/src/projection/line-fit.js';

// Certified data sets are in tests/reference/nist-*.test.ts.
const points = fc
  .uniqueArray(fc.integer({ min: 1, max: 5000 }), { minLength: 3, maxLength: 12 })
  .chain((xs) =>
    fc.record({
      xs: fc.constant(xs),
      ys: fc.array(fc.integer({ min: 1, max: 5000 }), {
        minLength: xs.length,
        maxLength: xs.length,
      }),
    }),
  )
  .filter(({ ys }) => new Set(ys).size > 1);

describe('fitLine', () => {
  test('a small line, worked by hand', () => {
    const { intercept, slope, scatter } = fitLine([1, 2, 3, 4, 5], [2.1, 3.9, 6.2, 7.8, 10.1]);
    expect(intercept).toBeCloseTo(0.05, 12);
    expect(slope).toBeCloseTo(1.99, 12);
    expect(scatter!.deviation).toBeCloseTo(0.188856206323, 12);
    expect(scatter!.t).toBeCloseTo(3.182446305284, 10);
  });

  test('two points lie on their line, and show nothing about it', () => {
    const fit = fitLine([1, 3], [2, 8]);
    expect(fit).toMatchObject({ slope: 3, intercept: -1, x: 2, y: 5, residuals: [0, 0] });
    expect(fit.scatter).toBeNull();
  });

  test('agrees with a reference library', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const pairs = xs.map((x, i) => [x, ys[i]!]);
        const { m, b } = linearRegression(pairs);
        const fit = fitLine(xs, ys);
        expect(fit.slope).toBeCloseTo(m, 8);
        expect(Math.abs(fit.intercept - b)).toBeLessThan(1e-6 * (1 + Math.abs(b)));
        const explained = rSquared(pairs, linearRegressionLine({ m, b }));
        expect(fit.scatter!.rSquared).toBeCloseTo(explained, 8);
      }),
    );
  });

  test('agrees with exact fractions', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const sum = (of: (i: number) => number) =>
          xs.reduce((total, _, i) => total + BigInt(of(i)), 0n);
        const n = BigInt(xs.length);
        const [sx, sy] = [sum((i) => xs[i]!), sum((i) => ys[i]!)];
        const top = n * sum((i) => xs[i]! * ys[i]!) - sx * sy;
        const bottom = n * sum((i) => xs[i]! * xs[i]!) - sx * sx;
        const slope = Number(top) / Number(bottom);
        expect(Math.abs(fitLine(xs, ys).slope - slope)).toBeLessThan(1e-9 * (1 + Math.abs(slope)));
      }),
    );
  });

  test('residuals sum to nothing and do not lean', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const { residuals } = fitLine(xs, ys);
        expect(residuals.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 6);
        expect(residuals.reduce((a, r, i) => a + r * xs[i]!, 0) / 5000).toBeCloseTo(0, 5);
      }),
    );
  });
});

test('intervalOf reaches t standard errors either way', () => {
  const { scatter } = fitLine([1, 2, 3], [1, 2, 4]);
  const { low, high } = intervalOf(10, 2, scatter!);
  expect(high - 10).toBeCloseTo(2 * 12.706204736175, 9); // t for one degree of freedom, printed tables
  expect(10 - low).toBeCloseTo(high - 10, 12);
});
