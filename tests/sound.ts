import { PacingError } from 'backhalf';

/**
 * Whatever went in: a value without NaN or Infinity came out, or a {@link PacingError} was thrown.
 * Any other error goes on up.
 */
export function isSound(call: () => unknown): boolean {
  try {
    return holdsNumbers(call());
  } catch (error) {
    if (error instanceof PacingError) return true;
    throw error;
  }
}

function holdsNumbers(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value) && !Object.is(value, -0);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(holdsNumbers);
}
