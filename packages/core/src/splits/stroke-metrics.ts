import { choiceOf, fieldsOf, numberOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import type { Unit } from '../course/pool.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';

/** A stretch whose stroke cycles were counted. */
export interface CountedSwim {
  /** The distance swum, in metres, or in `unit`. */
  readonly distance: number;
  /** The unit of `distance`; metres unless given. */
  readonly unit?: Unit;
  /** Its time, in hundredths of a second. */
  readonly time: Hundredths;
  /** Stroke cycles, a count, halves allowed. In crawl and backstroke one cycle is two arm strokes. */
  readonly cycles: number;
}

/** What a stroke count shows, in plain numbers. */
export interface StrokeMetrics {
  /** Speed, in metres per second. */
  readonly speed: number;
  /** Stroke rate, in cycles per minute. */
  readonly rate: number;
  /** Distance per cycle, in metres; push-offs make it longer than the stroke itself is. */
  readonly perCycle: number;
  /** Stroke index: speed × distance per cycle, in square metres per second. */
  readonly index: number;
}

/**
 * Speed, stroke rate, distance per cycle and stroke index of a swim whose cycles were counted. Compare them
 * within one swimmer, one stroke and one pool; a count of three cycles by the watch is {@link strokeRate}.
 *
 * @param swim - The distance in metres (or yards, with `unit`), the time in hundredths of a second, and
 *   the cycles, a count.
 * @returns Speed in metres per second, rate in cycles per minute, metres per cycle, and the index.
 * @throws {@link PacingError} `out-of-range` for a distance outside 1 to 1,000,000 or a count outside
 *   0.5 to 1,000,000; `not-a-time`, `unknown-choice`, `wrong-shape`.
 * @example
 * const { rate, perCycle } = strokeMetrics({ distance: 50, time: parseTime('30.00'), cycles: 18 });
 * rate; // => 36
 * perCycle.toFixed(2); // => '2.78'
 * @see Costill et al. 1985, International Journal of Sports Medicine, for the stroke index (from memory).
 */
export function strokeMetrics(swim: CountedSwim): StrokeMetrics {
  const { distance, unit = 'm', time, cycles } = fieldsOf(swim, 'The swim');
  const length = numberOf(distance, 'The distance', { min: 1, max: 1e6 });
  const metres = convertDistance(length, choiceOf(unit, ['m', 'yd'], 'The unit'), 'm');
  const seconds = timeOf(time, 'The time') / 100;
  const count = countedCycles(cycles);
  const speed = metres / seconds;
  const perCycle = metres / count;
  return { speed, rate: (60 * count) / seconds, perCycle, index: speed * perCycle };
}

/**
 * The stroke rate from a few timed cycles: three are usual. What a swim's own count shows is
 * {@link strokeMetrics}.
 *
 * @param cycles - The cycles timed, a count, halves allowed; two arm strokes in crawl and backstroke.
 * @param time - The time they took, in hundredths of a second.
 * @returns The rate in cycles per minute.
 * @throws {@link PacingError} `out-of-range` for a count outside 0.5 to 1,000,000; `not-a-time`.
 * @example
 * strokeRate(3, fromSeconds(4.5)); // => 40
 */
export function strokeRate(cycles: number, time: Hundredths): number {
  return (6000 * countedCycles(cycles)) / timeOf(time, 'The time');
}

const countedCycles = (cycles: unknown): number =>
  numberOf(cycles, 'The cycles', { min: 0.5, max: 1e6 });
