import { type Hundredths, hundredths, nearestHundredth } from './hundredths.js';

/**
 * Shares a time out by weights. The running total is rounded, never the single share, so the shares
 * always add up to the time, and none strays by a hundredth or more from its exact part.
 */
export function shareOut(total: number, weights: readonly number[]): readonly Hundredths[] {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  let weighed = 0;
  let shared = 0;
  return weights.map((weight, i) => {
    weighed += weight;
    const reached = i === weights.length - 1 ? total : (total * weighed) / whole;
    const share = hundredths(nearestHundredth(reached) - shared);
    shared += share;
    return share;
  });
}
