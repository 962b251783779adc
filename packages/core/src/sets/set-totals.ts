import { type Caution, cautionsWhere } from '../caution.js';
import { sumOf } from '../statistics.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { blocksOf } from './notation/blocks-of.js';
import { distanceOf } from './notation/measure.js';
import type { PlannedSet, SetBlock } from './planned-set.js';
import { clockOf, type PlannedSwim } from './set-clock.js';
import { pacesOf, type SetPaces } from './set-paces.js';

/** What a block of a set adds up to. */
export interface BlockTotals {
  /** Its heading; null for what stands before any heading. */
  readonly name: SetBlock['name'];
  /** Its distance, in the pool's unit. */
  readonly distance: number;
  /** When it is over, its last rest included, in hundredths of a second from the first start; or null. */
  readonly end: Hundredths | null;
}

/** What a set adds up to; null stands for what the set and the paces leave open. */
export interface SetTotals {
  /** How far, in the pool's unit. */
  readonly distance: number;
  /** How many swims: a count. */
  readonly reps: number;
  /** Time spent swimming, in hundredths of a second; or null. */
  readonly swimTime: Hundredths | null;
  /** Rest between the first start and the last finish, in hundredths of a second; or null. */
  readonly rest: Hundredths | null;
  /** From the first start to the last finish, in hundredths of a second; or null. */
  readonly duration: Hundredths | null;
  /** What it takes in a plan, its last rest included, in hundredths of a second; or null. */
  readonly booked: Hundredths | null;
  /** The same by block. */
  readonly blocks: readonly BlockTotals[];
  /** Every swim with its departure, in order. */
  readonly clock: readonly PlannedSwim[];
  /** What to know before trusting the figures. */
  readonly cautions: readonly Caution[];
}

/**
 * What a planned set adds up to: distance, swim time, rest, duration, and the clock of its departures. The set is
 * read by {@link parseSet}.
 *
 * Nothing is guessed. A swim takes the time of its target, or of the pace given for it; between reps
 * without send-off and rest the rest is unknown. What hangs on something unknown is null, and a
 * caution says why. Two readings are taken as handouts mean them: a single swim without either runs
 * on into the next, and rest after a round comes on top of its last rep's own.
 *
 * @param set - The set: distances in the pool's unit, times in hundredths of a second.
 * @param options - Paces in hundredths of a second per 100 of the pool's unit, the lane (a count from 1),
 *   rest between rounds in hundredths of a second, and the pool; none of them needed.
 * @returns Distances in the pool's unit, times in hundredths of a second.
 * @throws {@link PacingError} `not-whole-lengths` where a pool is given that a distance does not fit;
 *   `out-of-range` for a lane that the set has no send-off for; `too-large`; the codes of
 *   {@link formatSet} where set or options are not what they should be.
 * @example
 * const totals = setTotals(parseSet('10 x 100 on 1:30'), { pace: parseTime('1:07.00') });
 * totals.distance; // => 1000
 * const { booked, duration, rest } = totals;
 * [booked, duration, rest].map((time) => time && formatTime(time)); // => ['15:00.00', '14:37.00', '3:27.00']
 * @example
 * const { duration, cautions } = setTotals(parseSet('8 x 50 r 15'));
 * duration; // => null
 * cautions.map(({ code }) => code); // => ['pace-unknown']
 */
export function setTotals(set: PlannedSet, options: SetPaces = {}): SetTotals {
  const parts = blocksOf(set);
  const { swims, ends } = clockOf(parts, pacesOf(options));
  const blocks = parts.map(({ name, items }, i) => {
    return { name, distance: sumOf(items.map(distanceOf)), end: ends[i] ?? null };
  });
  const last = swims.at(-1);
  const before = swims.slice(0, -1);
  const unstated = before.filter(({ stated }) => !stated);
  return {
    distance: sumOf(blocks.map(({ distance }) => distance)),
    reps: swims.length,
    swimTime: sumIfKnown(swims.map(({ swim }) => swim)),
    rest: sumIfKnown(before.map(({ rest }) => rest)),
    duration: sumIfKnown([last?.start ?? null, last?.swim ?? null]),
    booked: ends.at(-1) ?? null,
    blocks,
    clock: swims.map(({ stated: _, ...swim }) => swim),
    cautions: totalsCautions(swims.length, {
      unpaced: swims.filter(({ swim }) => swim === null).length,
      restless: unstated.filter(({ rest }) => rest === null).length,
      runOn: unstated.filter(({ rest }) => rest !== null).length,
      missed: swims.filter(({ rest }) => rest !== null && rest < 0).length,
    }),
  };
}

function sumIfKnown(times: readonly (Hundredths | null)[]): Hundredths | null {
  const known = times.filter((time) => time !== null);
  return known.length < times.length ? null : hundredths(sumOf(known));
}

function totalsCautions(
  reps: number,
  found: { unpaced: number; restless: number; runOn: number; missed: number },
): readonly Caution[] {
  return cautionsWhere(
    [
      found.unpaced > 0,
      'pace-unknown',
      `${found.unpaced} of ${reps} swims have neither a target nor a pace, so their times are not known.`,
    ],
    [
      found.restless > 0,
      'rest-unknown',
      `After ${found.restless} of ${reps} swims the rest is not known: give a send-off or a rest.`,
    ],
    [
      found.runOn > 0,
      'rest-unstated',
      `After ${found.runOn} single ${found.runOn === 1 ? 'swim' : 'swims'} nothing is said of rest; the next is taken to start at once.`,
    ],
    [
      found.missed > 0,
      'missed-send-off',
      `${found.missed} of ${reps} swims take longer than the send-off: the set cannot be swum as set.`,
    ],
  );
}
