import { type SwumSet, setOf } from '../sets/swum-set.js';
import { finishOf } from '../splits/splits.js';
import { sumOf } from '../statistics.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import { pacePer } from '../time/pace.js';
import { backHalfEstimate } from './back-half.js';
import type { Estimate } from './estimate.js';
import { type Race, raceOf } from './race.js';

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
  const { distance, inSetUnit, cautions } = raceOf(race, swum.pool);
  const estimate = backHalfEstimate(swum, inSetUnit, cautions);
  const times = sumOf(swum.reps.map((rep) => finishOf(rep).time));
  const wholeReps = nearestHundredth((times * inSetUnit) / (swum.reps.length * swum.repDistance));
  return {
    ...estimate,
    pace: pacePer(estimate.time, distance),
    wholeReps,
    optimism: hundredths(estimate.time - wholeReps),
  };
}
