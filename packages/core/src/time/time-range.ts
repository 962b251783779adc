import type { Hundredths } from './hundredths.js';

/** From the fastest to the slowest time, and what lies in between: never more than `covers` says. */
export interface TimeRange {
  /** The fast end, in hundredths of a second. */
  readonly low: Hundredths;
  /** The slow end, in hundredths of a second. */
  readonly high: Hundredths;
  /** What the range covers, and whose figure it rests on. */
  readonly covers: string;
}
