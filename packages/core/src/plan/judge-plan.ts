import { samePlace } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { halvesIfMarked } from '../splits/halves.js';
import { finishOf, type Mark, type Splits, splitsOf } from '../splits/splits.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import type { RacePlan } from './race-plan.js';
import { planOf } from './read-plan.js';

/** A plan and a swim at one mark they share. Above zero is always slower than planned. */
export interface PlanJudgementRow {
  /** Where, in the pool's unit. */
  readonly distance: number;
  /** What the watch was to show, in hundredths of a second. */
  readonly planned: Hundredths;
  /** What it showed, in hundredths of a second. */
  readonly swum: Hundredths;
  /** Swum less planned, in hundredths of a second. */
  readonly difference: Hundredths;
  /** How much of that came since the row before, in hundredths of a second. */
  readonly lost: Hundredths;
  /** Swum less the plan stretched to the time swum, in hundredths of a second: the shape alone. */
  readonly ofShape: Hundredths;
}

/** A race plan judged by the swim that followed. Above zero is always slower than planned. */
export interface PlanJudgement {
  /** One row a mark that plan and swim share; the last is the finish. */
  readonly rows: readonly PlanJudgementRow[];
  /** Time swum less goal, in hundredths of a second. */
  readonly difference: Hundredths;
  /** First half swum less planned, in hundredths of a second; null where one of them is unknown. */
  readonly firstHalf: Hundredths | null;
  /** Second half swum less planned, in hundredths of a second; null where one of them is unknown. */
  readonly secondHalf: Hundredths | null;
}

/**
 * Judges a race plan by the swim that followed, mark by mark and half by half.
 *
 * Two questions are kept apart: was the time made (`difference`), and was the race swum in the shape
 * that was planned (`ofShape`), whatever its time?
 *
 * @param plan - The plan; see {@link planRace}. Distances in the pool's unit.
 * @param splits - The swim; distances in the pool's unit, times in hundredths of a second.
 * @returns The differences in hundredths of a second, above zero where the swim was slower.
 * @throws {@link PacingError} `no-mark-there` where the swim does not end where the plan does;
 *   `wrong-shape` and the codes of {@link splitsFromMarks} where plan or swim is not one.
 * @example
 * const plan = planRace({ pool: LCM, distance: 200, goal: parseTime('2:12.00'), shape: 'even' });
 * const swim = splitsFromLaps(50, [3150, 3310, 3390, 3400].map(hundredths));
 * const judged = judgePlan(plan, swim);
 * judged.rows.map(({ difference }) => difference); // => [-150, -140, -50, 50]
 * judged.rows.map(({ lost }) => lost); // => [-150, 10, 90, 100]
 * judged.secondHalf; // => 190
 */
export function judgePlan(plan: RacePlan, splits: Splits): PlanJudgement {
  const { marks, halves } = planOf(plan);
  const swim = splitsOf(splits);
  const goal = finishOf({ marks });
  const finish = finishOf(swim);
  if (!samePlace(finish.distance, goal.distance)) {
    const message = `The swim ends at ${finish.distance}, but the plan at ${goal.distance}; give the whole swim in the plan's pool.`;
    throw new PacingError('no-mark-there', message, splits);
  }
  let before = 0;
  const rows = sharedMarks(marks, swim.marks).map(({ distance, planned, swum }) => {
    const difference = hundredths(swum - planned);
    const lost = hundredths(difference - before);
    const ofShape = nearestHundredth((swum * goal.time - planned * finish.time) / goal.time);
    before = difference;
    return { distance, planned, swum, difference, lost, ofShape };
  });
  const swumHalves = halvesIfMarked(swim);
  const half = (which: 'first' | 'second') =>
    halves && swumHalves && hundredths(swumHalves[which] - halves[which]);
  return {
    rows,
    difference: hundredths(finish.time - goal.time),
    firstHalf: half('first'),
    secondHalf: half('second'),
  };
}

function sharedMarks(plan: readonly Mark[], swim: readonly Mark[]) {
  let next = 0;
  return plan.flatMap(({ distance, time: planned }) => {
    // Both grow, so one walk along the swim finds them all.
    while (swim[next]!.distance < distance && !samePlace(swim[next]!.distance, distance)) next++;
    const { distance: reached, time: swum } = swim[next]!;
    return samePlace(reached, distance) ? [{ distance, planned, swum }] : [];
  });
}
