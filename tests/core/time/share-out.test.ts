import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareOut } from '../../../packages/core/src/time/share-out.js';

/** By another road: each running total as an exact fraction of big integers, a tie upwards. */
function oracle(total: number, weights: readonly number[]): readonly number[] {
  const whole = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  let weighed = 0n;
  const reached = weights.map((weight) => {
    weighed += BigInt(weight);
    return Number((2n * BigInt(total) * weighed + whole) / (2n * whole));
  });
  return reached.map((time, i) => time - (reached[i - 1] ?? 0));
}

const total = fc.integer({ min: 0, max: 3_600_000 });
const weights = fc.array(fc.integer({ min: 1, max: 20_000 }), { minLength: 1, maxLength: 80 });

test.each([
  [100_000, 15, [6667, 6666, 6667]],
  [100_660, 30, [3355, 3356, 3355]],
])('%d in %d equal shares repeats three times over', (time, count, repeated) => {
  const shares = shareOut(time, Array(count).fill(1));
  expect(shares).toEqual(Array.from({ length: count }, (_, i) => repeated[i % 3]));
});

test('a lap rounded alone would lose a hundredth: 3:59.99 over eight', () => {
  const shares = shareOut(23_999, Array(8).fill(1));
  expect(shares.reduce((sum, share) => sum + share, 0)).toBe(23_999);
  expect(shares.filter((share) => share === 3000)).toHaveLength(7);
});

test('shares are the exact fractions, rounded as a running total', () => {
  fc.assert(
    fc.property(total, weights, (time, by) => {
      expect(shareOut(time, by)).toEqual(oracle(time, by));
    }),
  );
});

test('they add up to the whole, whatever the weights', () => {
  const odd = fc.array(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), {
    minLength: 1,
    maxLength: 80,
  });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER }), odd, (time, by) => {
      expect(shareOut(time, by).reduce((sum, share) => sum + share, 0)).toBe(time);
    }),
  );
});

test('no share strays by a whole hundredth', () => {
  fc.assert(
    fc.property(total, weights, (time, by) => {
      const whole = by.reduce((sum, weight) => sum + weight, 0);
      shareOut(time, by).forEach((share, i) => {
        expect(Math.abs(share - (time * by[i]!) / whole)).toBeLessThanOrEqual(1);
      });
    }),
  );
});
