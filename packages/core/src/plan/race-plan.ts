import type { Caution } from '../caution.js';
import { countOf, fieldsOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { lengthsIn, type Pool, poolOf, snap } from '../course/pool.js';
import type { Halves } from '../splits/halves.js';
import { type Mark, splitsFromLaps } from '../splits/splits.js';
import { type Hundredths, hundredths, nearestHundredth, timeOf } from '../time/hundredths.js';
import { spanOf } from '../time/span.js';
import { lengthTimes } from './length-times.js';
import { planCautions } from './plan-cautions.js';
import { type RaceShape, shapeOf } from './race-shape.js';

/** As many as a swim may have marks. */
const MOST_LENGTHS = 100_000;

/** What a race plan is made from; see {@link planRace}. */
export interface RaceOptions {
  /** The pool of the race. */
  readonly pool: Pool;
  /** The race's distance, in the pool's unit; a whole number of lengths. */
  readonly distance: number;
  /** The goal time, in hundredths of a second. */
  readonly goal: Hundredths;
  /** How the race is to be swum. */
  readonly shape: RaceShape;
  /** From mark to mark, in the pool's unit, a whole number of lengths; one length unless given. */
  readonly every?: number;
  /**
   * By how much the dive makes the first length faster, in hundredths of a second; 0 unless given. A
   * shape taken from swims has its dive in it and takes neither this nor a finish lift.
   */
  readonly startCredit?: Hundredths;
  /** By how much the finish makes the last length faster, in hundredths of a second; 0 unless given. */
  readonly finishLift?: Hundredths;
}

/** A race plan. It is a swim too: whatever reads splits reads it. */
export interface RacePlan {
  /** The pool of the race. */
  readonly pool: Pool;
  /** The race's distance, in the pool's unit. */
  readonly distance: number;
  /** The goal time, in hundredths of a second. */
  readonly goal: Hundredths;
  /** What the watch must show where; the last mark is the finish, and shows the goal. */
  readonly marks: readonly Mark[];
  /** From mark to mark, in hundredths of a second; they add up to the goal exactly. */
  readonly laps: readonly Hundredths[];
  /** Both halves as planned, to the hundredth; null for a race of one length. */
  readonly halves: Halves | null;
  /** Second half less first, in hundredths of a second; null for a race of one length. */
  readonly difference: Hundredths | null;
  /** Marks worth remembering: the walls nearest to each quarter of the race (of two, the earlier). */
  readonly checkpoints: readonly Mark[];
  /** What to know before swimming by it. */
  readonly cautions: readonly Caution[];
}

/**
 * Plans a race: what the watch must show at each wall for a goal time and a shape.
 *
 * Laps and marks add up to the goal to the hundredth, because the running total is rounded and never
 * the single lap. Halves differ by exactly what was asked; where the hundredths do not halve, the
 * first half takes the odd one and a caution says so.
 *
 * A dive makes the first lap faster at the same effort; how much is the swimmer's own, so nothing is
 * taken off unless you say so. Halves are what the watch shows, dive and finish included. The plan is printed by
 * {@link paceCard}, and held against the swim by {@link judgePlan}; without walls see {@link planOpenWater}.
 *
 * @param options - `pool`; `distance` and `every` in the pool's unit; `goal`, `startCredit` and
 *   `finishLift` in hundredths of a second; `shape`.
 * @returns The plan; distances in the pool's unit, times in hundredths of a second.
 * @throws {@link PacingError} `not-whole-lengths` where a distance ends between the walls;
 *   `unknown-choice` for no such shape; `out-of-range` where a length would be left no time, or the halves would
 *   differ by more than a quarter of the goal;
 *   `halfway-not-bracketed` for halves of a race of one length; `not-a-time`, `too-large`, `wrong-shape`
 *   and the codes of {@link splitsFromMarks} where a field is not what it should be.
 * @example
 * const plan = planRace({ pool: SCM, distance: 200, goal: parseTime('2:20.00'), shape: 'even', every: 50 });
 * plan.laps.map((lap) => formatTime(lap)); // => ['35.00', '35.00', '35.00', '35.00']
 * @example
 * const shape = { secondHalf: fromSeconds(-3) };
 * const plan = planRace({ pool: SCY, distance: 1650, goal: parseTime('18:20.00'), shape, every: 100 });
 * plan.halves && [plan.halves.first, plan.halves.second].map((half) => formatTime(half));
 * // => ['9:11.50', '9:08.50']
 * plan.marks.at(-1); // => { distance: 1650, time: 110000 }
 * @see Official results of the Olympic Games 2000–2016, via the open dataset swimset, for the
 *   championship shape.
 */
export function planRace(options: RaceOptions): RacePlan {
  const asked = fieldsOf(options, 'The plan');
  const pool = poolOf(asked['pool']);
  const count = lengthsOf(pool, asked['distance']);
  const distance = snap(pool.length * count);
  const stride = lengthsOf(pool, asked['every'] ?? pool.length);
  const goal = timeOf(asked['goal'], 'The goal');
  const edges = {
    startCredit: spanOf(asked['startCredit'] ?? 0, 'The start credit'),
    finishLift: spanOf(asked['finishLift'] ?? 0, 'The finish lift'),
  };
  const shape = shapeOf(asked['shape'], convertDistance(distance, pool.unit, 'm'));

  const { marks: walls } = splitsFromLaps(pool.length, lengthTimes(shape, goal, count, edges));
  const marks = walls.filter((_, i) => (i + 1) % stride === 0 || i + 1 === count);
  const halves = halvesAt(walls);
  const difference = halves && hundredths(halves.second - halves.first);
  return {
    pool,
    distance,
    goal,
    marks,
    laps: marks.map(({ time }, i) => hundredths(time - (marks[i - 1]?.time ?? 0))),
    halves,
    difference,
    checkpoints: quarters(walls),
    cautions: planCautions(shape, { pool, distance, edges, halves, difference }),
  };
}

function lengthsOf(pool: Pool, distance: unknown): number {
  return countOf(lengthsIn(pool, distance as number), 'The number of lengths', 1, MOST_LENGTHS);
}

/** Counted in lengths: a third of a hundred is no exact distance, and a tie could be lost on it. */
function halvesAt(walls: readonly Mark[]): Halves | null {
  const before = walls[Math.floor(walls.length / 2) - 1];
  const after = walls[Math.ceil(walls.length / 2) - 1];
  const finish = walls[walls.length - 1];
  if (before === undefined || after === undefined || finish === undefined) return null;
  const first = nearestHundredth((before.time + after.time) / 2);
  return { first, second: hundredths(finish.time - first), interpolated: before !== after };
}

function quarters(walls: readonly Mark[]): readonly Mark[] {
  const nearest = [1, 2, 3, 4].map((quarter) => Math.ceil((walls.length * quarter) / 4 - 0.5));
  return [...new Set(nearest)].flatMap((length) => walls[length - 1] ?? []);
}
