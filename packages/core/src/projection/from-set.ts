import { cautionsWhere } from '../caution.js';
import { fieldsOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { distanceOf, type Pool, poolOf } from '../course/pool.js';
import { type SwumSet, setOf } from '../sets/swum-set.js';
import { finishOf } from '../splits/splits.js';
import { sumOf } from '../statistics.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import { pacePer } from '../time/pace.js';
import { backHalfEstimate } from './back-half.js';
import type { Estimate } from './estimate.js';

/** The race a set is read for. */
export interface Race {
  /** The race's distance, in the unit of its own pool. */
  readonly distance: number;
  /** The pool of the race; the set's own unless given. */
  readonly pool?: Pool;
}

/** A race time read from second halves, beside the one that whole reps promise. */
export interface SetProjection extends Estimate {
  /** The pace of the estimate, in hundredths of a second per 100 of the race pool's unit. */
  readonly pace: Hundredths;
  /** What whole reps promise: the flattering time, in hundredths of a second. */
  readonly wholeReps: Hundredths;
  /** The estimate less `wholeReps`, in hundredths of a second: the set's optimism over the race. */
  readonly optimism: Hundredths;
}

/**
 * Projects a race from a timed set: the pace of twice the mean second half, held over the race.
 *
 * The rule is common practice, and nobody has measured how well it does; the range covers only how much a
 * swimmer's races vary anyway. Reps without a mark at or before halfway are left out, with a caution. A race
 * swum in pieces is read by {@link projectBrokenSwim}.
 *
 * @param set - The set as timed: distances in the pool's unit, times in hundredths of a second.
 * @param race - The race: its distance in its pool's unit, and the pool where it is not the set's.
 * @returns The estimate and the gap to what whole reps promise, in hundredths of a second.
 * @throws {@link PacingError} `halfway-not-bracketed` where no rep can be halved; `out-of-range` for a
 *   race distance not above zero; `too-large`; the codes of {@link readSet}.
 * @example
 * const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
 * const set = { pool: SCM, repDistance: 100, reps: Array(20).fill(rep), sendOff: hundredths(9000) };
 * const race = projectFromSet(set, { distance: 1500 });
 * formatTime(race.time); // => '16:45.00'
 * formatTime(race.wholeReps); // => '16:15.00'
 * formatTime(race.optimism, { signed: true }); // => '+30.00'
 * @see Stewart and Hopkins 2000, Med. Sci. Sports Exerc. 32(5), for how much a swimmer's races vary.
 */
export function projectFromSet(set: SwumSet, race: Race): SetProjection {
  const swum = setOf(set);
  const { distance, pool } = fieldsOf(race, 'The race');
  const length = distanceOf(distance, 'The race distance');
  const racePool = pool === undefined ? swum.pool : poolOf(pool, "The race's pool");
  const inSetUnit = convertDistance(length, racePool.unit, swum.pool.unit);
  const differs = racePool.length !== swum.pool.length || racePool.unit !== swum.pool.unit;

  const estimate = backHalfEstimate(
    swum,
    inSetUnit,
    cautionsWhere([
      differs,
      'course-differs',
      'The race is in another pool than the set: turns and their push-offs are not allowed for.',
    ]),
  );
  const times = sumOf(swum.reps.map((rep) => finishOf(rep).time));
  const wholeReps = nearestHundredth((times * inSetUnit) / (swum.reps.length * swum.repDistance));
  return {
    ...estimate,
    pace: pacePer(estimate.time, length),
    wholeReps,
    optimism: hundredths(estimate.time - wholeReps),
  };
}
