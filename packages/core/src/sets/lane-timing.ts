import { countOf, itemsOf } from '../check.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';
import { spanOf } from '../time/span.js';

/** Leaving five seconds apart is the habit where nothing else is said: common practice. */
const FIVE_APART = 500 as Hundredths;

/** More than any lane holds, and more reps than a day has; keeps a mistyped count from filling the memory. */
const MOST_SWIMMERS = 100;
const MOST_REPS = 10_000;

/** When a lane leaves: on a send-off, one swimmer after another. For {@link clockReadings} and {@link setDuration}. */
export interface LaneTiming {
  /** Time from one start to the next, in hundredths of a second. */
  readonly sendOff: Hundredths;
  /** How many reps, a count. */
  readonly reps: number;
  /** Time between two swimmers of the lane, in hundredths of a second; 5 s unless given (common practice). */
  readonly stagger?: Hundredths;
  /** How many swimmers the lane has, a count; 1 unless given. */
  readonly swimmers?: number;
}

/** A lane's timing out of plain data. */
export function timingOf(fields: Record<string, unknown>): Required<LaneTiming> {
  const { sendOff, reps, stagger, swimmers = 1 } = fields;
  return {
    sendOff: timeOf(sendOff, 'The send-off'),
    reps: countOf(reps, 'The number of reps', 1, MOST_REPS),
    stagger: staggerOf(stagger),
    swimmers: countOf(swimmers, 'The number of swimmers', 1, MOST_SWIMMERS),
  };
}

/** The time between two swimmers; zero where they leave together. */
export function staggerOf(value: unknown = FIVE_APART): Hundredths {
  return spanOf(value, 'The time between swimmers');
}

/** The swim times of a lane, one a swimmer in the order they leave. */
export function swimsOf(value: unknown): readonly Hundredths[] {
  const swims = itemsOf(value, 'The swims');
  countOf(swims.length, 'The number of swims', 1, MOST_SWIMMERS);
  return swims.map((swim, i) => timeOf(swim, `Swim ${i + 1}`));
}
