import { lengthsIn, type Pool } from '../course/pool.js';
import { finishOf, type Mark } from '../splits/splits.js';
import { formatTime } from '../time/format-time.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import type { RacePlan } from './race-plan.js';
import { planOf } from './read-plan.js';

/** A line of a pace card: where, and what the watch must show there. */
export interface PaceCardRow extends Mark {
  /** Lengths swum so far, a count. */
  readonly lengths: number;
  /** Time since the row before, in hundredths of a second. */
  readonly lap: Hundredths;
  /** The same as text, ready to print. */
  readonly text: {
    /** The distance with its unit. */
    readonly distance: string;
    /** Time since the row before. */
    readonly lap: string;
    /** What the watch must show. */
    readonly time: string;
  };
}

/** A race plan to print and take to the pool. */
export interface PaceCard {
  /** Distance and goal, as text. */
  readonly title: string;
  /** One row a mark of the plan. */
  readonly rows: readonly PaceCardRow[];
  /** The few rows worth remembering. */
  readonly checkpoints: readonly PaceCardRow[];
  /** Halfway, also where no row stands there, in hundredths of a second; null for a single length. */
  readonly halfway: {
    /** Half the distance, in the pool's unit. */
    readonly distance: number;
    /** What the watch must show, in hundredths of a second. */
    readonly time: Hundredths;
    /** True where halfway lies between two walls, so that nobody can touch and look. */
    readonly interpolated: boolean;
    /** The time as text. */
    readonly text: string;
  } | null;
}

/**
 * Lays a race plan out as a pace card, ready to print and to take to the pool: what the watch must show at each
 * mark, the few worth remembering, and halfway.
 *
 * @param plan - The plan; see {@link planRace}. Times in hundredths of a second.
 * @returns The card: rows with times in hundredths of a second and as text, checkpoints and halfway.
 * @throws {@link PacingError} `not-whole-lengths` where a mark is at no wall; `wrong-shape` and the
 *   codes of {@link splitsFromMarks} where it is not a plan.
 * @example
 * const card = paceCard(
 *   planRace({ pool: SCY, distance: 500, goal: parseTime('5:00.00'), shape: 'even', every: 100 }),
 * );
 * card.title; // => '500 yd in 5:00.00'
 * card.rows.map(({ text }) => text.time); // => ['1:00.00', '2:00.00', '3:00.00', '4:00.00', '5:00.00']
 * card.halfway?.text; // => '2:30.00'
 */
export function paceCard(plan: RacePlan): PaceCard {
  const { pool, marks, halves, checkpoints } = planOf(plan);
  const finish = finishOf({ marks });
  return {
    title: `${finish.distance} ${pool.unit} in ${formatTime(finish.time)}`,
    rows: rowsOf(pool, marks),
    checkpoints: rowsOf(pool, checkpoints),
    halfway: halves && {
      distance: finish.distance / 2,
      time: halves.first,
      interpolated: halves.interpolated,
      text: formatTime(halves.first),
    },
  };
}

function rowsOf(pool: Pool, marks: readonly Mark[]): readonly PaceCardRow[] {
  return marks.map(({ distance, time }, i) => {
    const lap = hundredths(time - (marks[i - 1]?.time ?? 0));
    return {
      distance,
      time,
      lengths: lengthsIn(pool, distance),
      lap,
      text: {
        distance: `${distance} ${pool.unit}`,
        lap: formatTime(lap),
        time: formatTime(time),
      },
    };
  });
}
