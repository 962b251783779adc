import {
  findSetSlips,
  formatTime,
  isPacingError,
  type Pool,
  projectFromSet,
  readSet,
  type SetProjection,
  type SetReading,
  type SwumSet,
} from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { readCountText } from '~/ui/count-text';
import { type PoolFields, poolShape, readPool } from '~/ui/pool-text';
import { type RepsText, readReps } from '~/ui/reps-text';
import { type RestFields, readRest, restShape } from '~/ui/rest-text';

export interface SetFields extends PoolFields, RestFields, Readonly<Record<string, string>> {
  /** The distance of a rep. */
  readonly distance: string;
  /** Whether the times of a rep are its halves, or count from its start. */
  readonly kind: string;
  /** One rep a line. */
  readonly reps: string;
  readonly race: string;
}

export const shape: Shape<SetFields> = {
  ...poolShape,
  distance: 'any',
  kind: ['halves', 'running'],
  reps: 'any',
  ...restShape,
  race: 'any',
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: SetFields): string =>
  `/calculators/read-a-set/?${queryOf(fields)}`;

export interface SetView {
  readonly pool: Pool | null;
  readonly reps: RepsText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: {
    readonly length: string | null;
    readonly distance: string | null;
    readonly race: string | null;
    readonly reps: readonly string[];
    readonly rest: string | null;
  };
  /** None while something is still wrong. */
  readonly result: SetResult | null;
}

export interface SetResult {
  readonly set: SwumSet;
  readonly reading: SetReading;
  /** None where no rep has a halfway mark. */
  readonly race: SetProjection | null;
  readonly raceDistance: number;
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: SetFields): SetView {
  const { pool, error: poolError } = readPool(fields);
  const { count: distance, error: distanceError } = readCountText(fields.distance, 'Rep distance', {
    least: 10,
    most: 5000,
  });
  const race = readCountText(fields.race, 'Race distance', { least: 50, most: 25_000 });
  const reps = readReps(fields.reps, {
    distance: distance ?? 100,
    running: fields.kind === 'running',
  });
  const rest = readRest(fields, distance ?? 100, reps.reps);
  const none = reps.reps.length === 0 && reps.errors.length === 0;
  const errors = {
    length: poolError,
    distance: distanceError,
    race: race.error,
    reps: none ? ['Enter the reps, one a line: first half, second half.'] : reps.errors,
    rest: rest.error,
  };
  const seen = { pool, reps, errors, result: null };

  const ready = errors.reps.length === 0 && rest.error === null;
  if (!ready || pool === null || distance === null || race.count === null) return seen;
  try {
    const set: SwumSet = { pool, repDistance: distance, reps: reps.reps, ...rest.given };
    return { ...seen, result: resultOf(set, race.count) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { ...seen, errors: { ...errors, reps: [error.message] } };
  }
}

function resultOf(set: SwumSet, distance: number): SetResult {
  const reading = readSet(set);
  const race = reading.honestPace === null ? null : projectFromSet(set, { distance });
  const slips = findSetSlips(set).map(({ rep, why }) => `Rep ${rep} may hold a slip: ${why}`);
  const cautions = [...slips, ...(race ?? reading).cautions.map(({ message }) => message)];
  const sentence =
    race === null || reading.honestPace === null
      ? 'No rep has a time at halfway, so there is no second half to read.'
      : `Honest pace ${formatTime(reading.honestPace)} per 100, ${formatTime(race.time)} for ${distance}: ${formatTime(race.optimism, { signed: true }).slice(1)} ${race.optimism < 0 ? 'faster' : 'slower'} than the whole reps promise.`;
  return { set, reading, race, raceDistance: distance, sentence, cautions };
}
