// Small statistics on plain numbers, shared by the floors above. Each centres before it squares.

/** The mean of at least one number. */
export function meanOf(values: readonly number[]): number {
  return sumOf(values) / values.length;
}

/** The sum of numbers. */
export function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** The standard deviation with n − 1, or 0 for a single number: one value has no spread to show. */
export function deviationOf(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const mean = meanOf(values);
  return Math.sqrt(sumOf(values.map((value) => (value - mean) ** 2)) / (values.length - 1));
}

/** The least of at least one value. */
export function leastOf<T extends number>(values: readonly T[]): T {
  return values.reduce((a, b) => Math.min(a, b) as T);
}

/** The greatest of at least one value. */
export function greatestOf<T extends number>(values: readonly T[]): T {
  return values.reduce((a, b) => Math.max(a, b) as T);
}
