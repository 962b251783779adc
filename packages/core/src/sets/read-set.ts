import type { Caution } from '../caution.js';
import { fieldsOf } from '../check.js';
import { compareHalves, type HalfComparison, type Halves, toleranceOf } from '../splits/halves.js';
import { finishOf } from '../splits/splits.js';
import { deviationOf, greatestOf, leastOf, meanOf, sumOf } from '../statistics.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import { halvesOfReps, honestTime, markedHalves, meanHalves } from './second-halves.js';
import { setCautions } from './set-cautions.js';
import { restAfter, type SwumSet, setOf } from './swum-set.js';

/** The largest difference still called even, as a share of half the mean rep. A choice of ours. */
const EVEN = 0.015;

/** One rep of a set, read. */
export interface RepReading {
  /** The rep's time, in hundredths of a second. */
  readonly time: Hundredths;
  /** Its halves, or null where no mark stands at or before halfway. */
  readonly halves: Halves | null;
  /** Its halves compared, or null where there are none. */
  readonly comparison: HalfComparison | null;
  /** Rest after it in hundredths of a second, below zero for a missed send-off; null if unknown. */
  readonly rest: Hundredths | null;
}

/** What a timed set says about its swimmer. */
export interface SetReading {
  /** Each rep, in order. */
  readonly reps: readonly RepReading[];
  /** Mean rep time, in hundredths of a second. */
  readonly average: Hundredths;
  /** Fastest rep, in hundredths of a second. */
  readonly best: Hundredths;
  /** Slowest rep, in hundredths of a second. */
  readonly slowest: Hundredths;
  /** Standard deviation of the rep times (with n − 1), in hundredths of a second, not rounded. */
  readonly spread: number;
  /**
   * Mean of the last third of the reps less the mean of the first third, in hundredths of a second; below zero
   * the set got faster.
   */
  readonly fade: Hundredths;
  /** Mean first and second half over the reps that have them, in hundredths of a second; or null. */
  readonly halves: Halves | null;
  /** Those mean halves compared; or null. */
  readonly comparison: HalfComparison | null;
  /** The difference still called even, in hundredths of a second. */
  readonly evenWithin: Hundredths;
  /** Pace of the whole reps, which flatters, in hundredths of a second per 100 of the pool's unit. */
  readonly repPace: Hundredths;
  /**
   * The pace of twice the mean second half, in hundredths of a second per 100 of the pool's unit; or null where
   * no rep has halves.
   */
  readonly honestPace: Hundredths | null;
  /** Honest pace less rep pace, in hundredths of a second per 100: what whole reps flatter by; or null. */
  readonly optimism: Hundredths | null;
  /** Mean rest, in hundredths of a second; null if unknown. */
  readonly rest: Hundredths | null;
  /** What to know before trusting the figures. */
  readonly cautions: readonly Caution[];
}

/** What {@link readSet} calls even. */
export interface ReadSetOptions {
  /**
   * The largest difference still called even, in hundredths of a second; 1.5 % of half the
   * mean rep unless given, which is a choice, not a published value.
   */
  readonly evenWithin?: Hundredths;
}

/**
 * Reads a timed set by its second halves: what the whole reps promise, what the second halves hold, and how steady
 * the set was.
 *
 * A rep starts rested, off a clean push, with air to spare; its second half comes off a turn and out
 * of breath, which is what a race is like. So the pace that can be held is nearer twice the second
 * half than the whole rep (common practice, no published test). The difference between the two is
 * the set's optimism. What it makes of a race is {@link projectFromSet}, of the next set
 * {@link targetsFor}; mistakes of the watch are found by {@link findSetSlips} first.
 *
 * @param set - The set as timed: distances in the pool's unit, times in hundredths of a second.
 * @param options - What still counts as even halves, in hundredths of a second.
 * @returns The reading; times in hundredths of a second, paces per 100 of the pool's unit.
 * @throws {@link PacingError} `too-few-reps` for an empty set; `rep-distance-differs`; `wrong-shape`,
 *   `out-of-range`, `not-a-time`, `unknown-choice` and the codes of {@link splitsFromMarks} where a
 *   part of the set is not what it should be.
 * @example
 * const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
 * const set = { pool: SCM, repDistance: 100, reps: Array(20).fill(rep), sendOff: hundredths(9000) };
 * const { repPace, honestPace, optimism } = readSet(set);
 * [repPace, honestPace, optimism]; // => [6500, 6700, 200]
 * @example
 * const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
 * const { cautions } = readSet({ pool: SCM, repDistance: 100, reps: [rep, rep] });
 * cautions.map(({ code }) => code); // => ['few-reps', 'rest-unknown']
 */
export function readSet(set: SwumSet, options: ReadSetOptions = {}): SetReading {
  const swum = setOf(set);
  const times = swum.reps.map((rep) => finishOf(rep).time);
  const marked = markedHalves(swum);
  const halves = meanHalves(marked);
  const average = meanOf(times);
  const { evenWithin: wanted = nearestHundredth((EVEN * average) / 2) } = fieldsOf(
    options,
    'The options',
  );
  const evenWithin = toleranceOf(wanted);
  const compare = (cut: Halves | null) => cut && compareHalves(cut, { evenWithin });

  const reps = halvesOfReps(swum).map((cut, i) => {
    const time = times[i] as Hundredths; // one time for each rep
    return { time, halves: cut, comparison: compare(cut), rest: restAfter(swum, time) };
  });
  const rests = reps.map(({ rest }) => rest).filter((rest) => rest !== null);
  const repPace = nearestHundredth((sumOf(times) * 100) / (times.length * swum.repDistance));
  const honestPace = honestTime(swum, marked, 100);
  const spread = deviationOf(times);
  const fade = fadeOf(times);
  const rest = rests.length === 0 ? null : nearestHundredth(meanOf(rests));
  return {
    reps,
    average: nearestHundredth(average),
    best: leastOf(times),
    slowest: greatestOf(times),
    spread,
    fade,
    halves,
    comparison: compare(halves),
    evenWithin,
    repPace,
    honestPace,
    optimism: honestPace === null ? null : hundredths(honestPace - repPace),
    rest,
    cautions: setCautions(reps, { average, spread, fade, rest }),
  };
}

/** Last third less first third; under three reps, the last less the first. */
function fadeOf(times: readonly Hundredths[]): Hundredths {
  const third = Math.max(1, Math.floor(times.length / 3));
  return nearestHundredth(meanOf(times.slice(-third)) - meanOf(times.slice(0, third)));
}
