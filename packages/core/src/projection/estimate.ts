import type { Caution } from '../caution.js';
import { type Hundredths, nearestHundredth } from '../time/hundredths.js';
import type { TimeRange } from '../time/time-range.js';

/** A projected time with all that it rests on. Lay several side by side with {@link compareEstimates}. */
export interface Estimate {
  /** The projected time, in hundredths of a second. */
  readonly time: Hundredths;
  /** The range, or null where nobody has measured one. */
  readonly range: TimeRange | null;
  /** The method's name, such as `back-half`, `critical-speed` or `power-law`. */
  readonly method: string;
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
  /** What to know before trusting the figure. */
  readonly cautions: readonly Caution[];
}

// Stewart and Hopkins 2000, Med. Sci. Sports Exerc. 32(5): one swimmer's time in one event varies
// from meet to meet by 1.4 % (95 % limits 1.3 to 1.5), as a standard deviation, at national level.
const MEET_TO_MEET = 0.014;
const NINETY_PERCENT = 1.645; // two-sided, normal

/** The least a range of one future race can honestly be: how much one swimmer's races vary anyway. */
export function raceToRaceRange(time: number): TimeRange {
  const margin = NINETY_PERCENT * MEET_TO_MEET;
  return {
    low: nearestHundredth(time * (1 - margin)),
    high: nearestHundredth(time * (1 + margin)),
    covers:
      'Only how much one swimmer’s races vary from meet to meet (90 %, standard deviation 1.4 %, Stewart and Hopkins 2000). How far the method itself is off, nobody has measured.',
  };
}
