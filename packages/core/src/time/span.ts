import { PacingError } from '../errors.js';
import { differenceOf, type Hundredths } from './hundredths.js';

/** A stretch of time out of plain data, zero or more; `what` starts the sentence: "The rest". */
export function spanOf(value: unknown, what: string): Hundredths {
  const span = differenceOf(value, what);
  if (span >= 0) return span;
  throw new PacingError('out-of-range', `${what} must be zero or more.`, value);
}
