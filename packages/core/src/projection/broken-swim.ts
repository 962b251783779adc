import { snap } from '../course/pool.js';
import { type SwumSet, setOf } from '../sets/swum-set.js';
import { finishOf } from '../splits/splits.js';
import { sumOf } from '../statistics.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import { backHalfEstimate } from './back-half.js';
import type { Estimate } from './estimate.js';
import { type Race, raceOf } from './race.js';
import { restAwareEstimate } from './rest-aware.js';

/** A broken swim, read side by side: what was swum, and what each method makes of it. */
export interface BrokenSwimReading {
  /** The distance of the race it is read for, in the unit of the race's pool. */
  readonly distance: number;
  /** The broken time: all reps added without the rests, in hundredths of a second. No estimate. */
  readonly swum: Hundredths;
  /** The second halves added and doubled, scaled to the race: the honest reading. */
  readonly backHalf: Estimate;
  /** By published rest data, which are contested; null where this rest and rep distance were not measured. */
  readonly restAware: Estimate | null;
  /** The back-half time less what was swum, scaled alike, in hundredths of a second. */
  readonly optimism: Hundredths;
}

/**
 * Reads a broken swim: a race distance in pieces with short rest between.
 *
 * The added time of the pieces (the broken time) is not an estimate of the race: each piece began
 * with rest and a clean push. The second halves, added and doubled, are nearer (common practice). Where
 * published data cover the rest and the rep distance, what they give stands beside; the methods
 * disagree, and none is averaged away. With a fitted reserve, see {@link impliedTime}.
 *
 * @param set - The pieces as timed: distances in the pool's unit, times in hundredths of a second.
 * @param race - The race: its distance in its pool's unit, and the pool where it is not the set's; all pieces
 *   added, in the set's pool, unless given.
 * @returns The broken time and the estimates beside it, in hundredths of a second.
 * @throws {@link PacingError} `halfway-not-bracketed` where no piece can be halved; `out-of-range` for a
 *   race distance not above zero; `too-large`; the codes of {@link readSet}.
 * @example
 * const piece = splitsFromLaps(50, [2900, 3100].map(hundredths));
 * const broken = { pool: SCM, repDistance: 100, reps: Array(4).fill(piece), rest: hundredths(1000) };
 * const { swum, backHalf, restAware } = projectBrokenSwim(broken);
 * formatTime(swum); // => '4:00.00'
 * formatTime(backHalf.time); // => '4:08.00'
 * restAware && formatTime(restAware.time); // => '4:10.10'
 * @see Olbrecht et al. 1985, Int. J. Sports Med. 6(2), and Beidaris and Platanou 2025, Sci. J. Sport Perform.,
 *   for what rest is worth.
 */
export function projectBrokenSwim(set: SwumSet, race?: Race): BrokenSwimReading {
  const pieces = setOf(set);
  const total = snap(pieces.reps.length * pieces.repDistance);
  const { distance, inSetUnit, cautions } = raceOf(
    race === undefined ? { distance: total } : race,
    pieces.pool,
  );
  const swum = hundredths(sumOf(pieces.reps.map((rep) => finishOf(rep).time)));
  const backHalf = backHalfEstimate(pieces, inSetUnit, cautions);
  return {
    distance,
    swum,
    backHalf,
    restAware: restAwareEstimate(pieces, inSetUnit, cautions),
    optimism: nearestHundredth(backHalf.time - (swum * inSetUnit) / total),
  };
}
