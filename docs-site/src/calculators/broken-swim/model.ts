import {
  type BrokenSwimReading,
  type Comparison,
  compareEstimates,
  formatTime,
  isPacingError,
  type Pool,
  projectBrokenSwim,
  type RepTargets,
  readSet,
  type SetReading,
  type SwumSet,
  targetsFor,
} from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { readCountText } from '~/ui/count-text';
import { type PoolFields, poolShape, readPool } from '~/ui/pool-text';
import { type RepsText, readReps } from '~/ui/reps-text';
import { type RestFields, readRest, restShape } from '~/ui/rest-text';
import { distanceText } from '~/ui/wording';
import { type Method, methodsOf, type Reserve } from './methods';

export interface BrokenFields extends PoolFields, RestFields, Readonly<Record<string, string>> {
  /** The distance of a piece. */
  readonly distance: string;
  /** Whether the times of a piece are its halves, or count from its start. */
  readonly kind: string;
  /** One piece a line. */
  readonly pieces: string;
  /** The distance of the race; empty for all pieces added. */
  readonly race: string;
  /** The swimmer's reserve in metres and its time constant in seconds; both may be empty. */
  readonly reserve: string;
  readonly tau: string;
}

export const shape: Shape<BrokenFields> = {
  ...poolShape,
  ...restShape,
  distance: 'any',
  kind: ['halves', 'running'],
  pieces: 'any',
  race: 'any',
  reserve: 'any',
  tau: 'any',
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: BrokenFields): string =>
  `/calculators/broken-swim/?${queryOf(fields)}`;

export interface BrokenView {
  readonly pool: Pool | null;
  readonly pieces: RepsText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: {
    readonly length: string | null;
    readonly distance: string | null;
    readonly race: string | null;
    readonly pieces: readonly string[];
    readonly rest: string | null;
    readonly reserve: string | null;
    readonly tau: string | null;
  };
  /** None while something is still wrong. */
  readonly result: BrokenResult | null;
}

export interface BrokenResult {
  readonly set: SwumSet;
  readonly reading: SetReading;
  readonly race: BrokenSwimReading;
  readonly methods: readonly Method[];
  /** The methods that answer, fastest first. */
  readonly comparison: Comparison;
  readonly targets: RepTargets;
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: BrokenFields): BrokenView {
  const { pool, error: poolError } = readPool(fields);
  const piece = readCountText(fields.distance, 'Piece distance', { least: 10, most: 5000 });
  const race = optional(fields.race, 'Race distance', { least: 25, most: 25_000 });
  const reserve = optional(fields.reserve, 'Reserve', { most: 200, whole: false });
  const tau = optional(fields.tau, 'Time constant', { most: 5000, whole: false });
  const distance = piece.count ?? 100;
  const pieces = readReps(fields.pieces, {
    distance,
    running: fields.kind === 'running',
    what: 'Piece',
  });
  const rest = readRest(fields, distance, pieces.reps);
  const none = pieces.reps.length === 0 && pieces.errors.length === 0;
  const errors = {
    length: poolError,
    distance: piece.error,
    race: race.error,
    pieces: none ? ['Enter the pieces, one a line: first half, second half.'] : pieces.errors,
    rest: rest.error,
    reserve: reserve.error,
    tau: tau.error,
  };
  const seen = { pool, pieces, errors, result: null };
  if (pool === null || Object.values(errors).some((error) => error !== null && error.length > 0)) {
    return seen;
  }
  try {
    const set = { pool, repDistance: distance, reps: pieces.reps, ...rest.given };
    const given = { metres: reserve.count, tau: tau.count };
    return { ...seen, result: resultOf(set, race.count, given) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { ...seen, errors: { ...errors, pieces: [error.message] } };
  }
}

const optional = (text: string, label: string, limits: Parameters<typeof readCountText>[2]) =>
  text.trim() === '' ? { count: null, error: null } : readCountText(text, label, limits);

function resultOf(set: SwumSet, distance: number | null, reserve: Reserve): BrokenResult {
  const reading = readSet(set);
  const whole = projectBrokenSwim(set);
  const race = distance === null ? whole : projectBrokenSwim(set, { distance });
  const methods = methodsOf(set, reading, race, whole, reserve);
  const comparison = compareEstimates(methods.flatMap(({ estimate }) => estimate ?? []));
  const length = `${distanceText(race.distance)} ${set.pool.unit}`;
  return {
    set,
    reading,
    race,
    methods,
    comparison,
    targets: targetsFor(reading),
    sentence: `Twice the second halves give ${formatTime(race.backHalf.time)} for ${length}; ${formatTime(race.swum)} was swum, rests left out.`,
    cautions: cautionsOf(comparison),
  };
}

function cautionsOf({ estimates, cautions }: Comparison): readonly string[] {
  const [fastest, slowest] = [estimates[0], estimates.at(-1)];
  const apart =
    fastest === undefined || slowest === undefined || estimates.length < 2
      ? 'One method answers here. Where others can, they disagree: lay them beside it before you trust it.'
      : `${estimates.length} methods answer, from ${formatTime(fastest.time)} to ${formatTime(slowest.time)}. They take different things for granted, so none is averaged with another.`;
  return [apart, ...cautions.map(({ message }) => message)];
}
