/** a : b to the nearest whole number, a tie upward, both above zero: the same by whole numbers only. */
export function nearestOf(a: bigint, b: bigint): number {
  return Number((2n * a + b) / (2n * b));
}
