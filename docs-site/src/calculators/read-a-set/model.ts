import {
  formatTime,
  type Hundredths,
  hundredths,
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
import { plausibleTimes } from '~/ui/plausible';
import { type PoolFields, poolShape, readPool } from '~/ui/pool-text';
import { readTimeText } from '~/ui/time-text';
import { type RepsText, readReps } from './reps-text';

export interface SetFields extends PoolFields, Readonly<Record<string, string>> {
  /** The distance of a rep. */
  readonly distance: string;
  /** Whether the times of a rep are its halves, or count from its start. */
  readonly kind: string;
  /** One rep a line. */
  readonly reps: string;
  /** What is known of the rest, and the time that tells. */
  readonly known: string;
  readonly rest: string;
  readonly race: string;
}

export const shape: Shape<SetFields> = {
  ...poolShape,
  distance: 'any',
  kind: ['halves', 'running'],
  reps: 'any',
  known: ['sendOff', 'rest', 'total', 'nothing'],
  rest: 'any',
  race: 'any',
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: SetFields): string =>
  `/calculators/read-a-set/?${queryOf(fields)}`;

export interface SetView {
  readonly pool: Pool | null;
  readonly poolError: string | null;
  readonly distanceError: string | null;
  readonly reps: RepsText;
  readonly repsErrors: readonly string[];
  readonly restError: string | null;
  readonly raceError: string | null;
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
  const { count: raceDistance, error: raceError } = readCountText(fields.race, 'Race distance', {
    least: 50,
    most: 25_000,
  });
  const reps = readReps(fields.reps, {
    distance: distance ?? 100,
    running: fields.kind === 'running',
  });
  const rest = readRest(fields, distance ?? 100, reps);
  const none = reps.reps.length === 0 && reps.errors.length === 0;
  const repsErrors = none ? ['Enter the reps, one a line: first half, second half.'] : reps.errors;
  const seen = { pool, poolError, distanceError, reps, restError: rest.error, raceError };

  const ready = repsErrors.length === 0 && rest.error === null;
  if (!ready || pool === null || distance === null || raceDistance === null) {
    return { ...seen, repsErrors, result: null };
  }
  try {
    const set: SwumSet = { pool, repDistance: distance, reps: reps.reps, ...rest.given };
    return { ...seen, repsErrors, result: resultOf(set, raceDistance) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { ...seen, repsErrors: [error.message], result: null };
  }
}

function resultOf(set: SwumSet, distance: number): SetResult {
  const reading = readSet(set);
  const race = reading.honestPace === null ? null : projectFromSet(set, { distance });
  const cautions = (race ?? reading).cautions.map(({ message }) => message);
  const sentence =
    race === null || reading.honestPace === null
      ? 'No rep has a time at halfway, so there is no second half to read.'
      : `Honest pace ${formatTime(reading.honestPace)} per 100, ${formatTime(race.time)} for ${distance}: ${formatTime(race.optimism, { signed: true }).slice(1)} ${race.optimism < 0 ? 'faster' : 'slower'} than the whole reps promise.`;
  return { set, reading, race, raceDistance: distance, sentence, cautions };
}

interface Rest {
  readonly given: { readonly sendOff?: Hundredths; readonly rest?: Hundredths };
  readonly error: string | null;
}

const labels: Readonly<Record<string, string>> = {
  sendOff: 'Send-off',
  rest: 'Rest after each rep',
  total: 'Time of the whole set',
};

/** The label of the field that tells the rest. */
export const restLabel = (known: string): string => labels[known] ?? '';

function readRest({ known, rest }: SetFields, distance: number, { reps }: RepsText): Rest {
  if (known === 'nothing') return { given: {}, error: null };
  const { time, error } = readTimeText(
    rest,
    restLabel(known),
    restWindow(known, distance, reps.length),
  );
  if (time === null) return { given: {}, error };
  if (known === 'sendOff') return { given: { sendOff: time }, error: null };
  if (known === 'rest') return { given: { rest: time }, error: null };

  // From the first start to the last touch: what was not swum was rest, shared by the gaps.
  const swum = reps.reduce((sum, { marks }) => sum + (marks.at(-1)?.time ?? 0), 0);
  const gaps = Math.max(reps.length - 1, 1);
  if (time >= swum)
    return { given: { rest: hundredths(Math.round((time - swum) / gaps)) }, error: null };
  const message = `The reps add up to ${formatTime(hundredths(swum))}, but the whole set says ${formatTime(time)}. Change one of them.`;
  return { given: {}, error: message };
}

/** The times that make sense for what tells the rest. */
export function restWindow(known: string, distance: number, reps: number) {
  const { from, to } = plausibleTimes(distance);
  if (known === 'sendOff') return { from, to: hundredths(to * 2) };
  if (known === 'rest') return { from: hundredths(0), to: hundredths(60_000) };
  return { from: hundredths(from * Math.max(reps, 1)), to: hundredths(to * 2 * Math.max(reps, 1)) };
}
