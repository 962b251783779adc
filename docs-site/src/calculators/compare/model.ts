import {
  type Comparison,
  compareEstimates,
  convertDistance,
  type Estimate,
  formatTime,
  type Hundredths,
  isPacingError,
  type Pool,
  REFERENCE_EXPONENTS,
  type SwumSet,
} from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readPool } from '~/ui/pool-text';
import { type RepsText, readReps } from '~/ui/reps-text';
import { readRest } from '~/ui/rest-text';
import { readTimeText } from '~/ui/time-text';
import { readTrials, type TrialsText } from '~/ui/trials-text';
import { distanceText, gapText } from '~/ui/wording';
import type { CompareFields } from './fields';
import { goalSentence } from './goal';
import { type Method, methodsOf } from './methods';

export interface CompareView {
  readonly pool: Pool | null;
  readonly swims: TrialsText;
  readonly reps: RepsText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: {
    readonly length: string | null;
    readonly race: string | null;
    readonly goal: string | null;
    readonly swims: readonly string[];
    readonly distance: string | null;
    readonly reps: readonly string[];
    readonly rest: string | null;
  };
  /** None while something is still wrong. */
  readonly result: CompareResult | null;
}

/** A method that answers. */
export interface Answered {
  readonly name: string;
  readonly estimate: Estimate;
}

export interface CompareResult {
  /** The race, as it is said: `1500 m`. */
  readonly race: string;
  readonly goal: Hundredths | null;
  /** Those that answer, fastest first, as in the comparison. */
  readonly answered: readonly Answered[];
  readonly comparison: Comparison;
  /** All methods, in their own order. */
  readonly methods: readonly Method[];
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

const optional = { time: null, count: null, error: null };

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: CompareFields): CompareView {
  const { pool, error: poolError } = readPool(fields);
  const race = readCountText(fields.race, 'Race distance', { least: 50, most: 25_000 });
  const goal =
    fields.goal.trim() === ''
      ? optional
      : readTimeText(fields.goal, 'Goal', plausibleTimes(race.count ?? 100));
  const swims = readTrials(fields.swims, 'Race');
  const withSet = fields.reps.trim() !== '';
  const distance = withSet
    ? readCountText(fields.distance, 'Rep distance', { least: 10, most: 5000 })
    : optional;
  const long = distance.count ?? 100;
  const reps = readReps(fields.reps, { distance: long, running: fields.kind === 'running' });
  const rest = withSet ? readRest(fields, long, reps.reps) : { given: {}, error: null };
  const errors = {
    length: poolError,
    race: race.error,
    goal: goal.error,
    swims: swims.errors,
    distance: distance.error,
    reps: reps.errors,
    rest: rest.error,
  };
  const seen = { pool, swims, reps, errors, result: null };
  const wrong = Object.values(errors).some((error) => error !== null && error.length > 0);
  if (wrong || pool === null || race.count === null) return seen;

  const set: SwumSet | null =
    reps.reps.length === 0 ? null : { pool, repDistance: long, reps: reps.reps, ...rest.given };
  const toMetres = (length: number) => convertDistance(length, pool.unit, 'm');
  try {
    const methods = methodsOf({
      pool,
      race: race.count,
      metres: toMetres(race.count),
      swims: swims.swims.map((swim) => ({ ...swim, distance: toMetres(swim.distance) })),
      set,
      exponent: REFERENCE_EXPONENTS[Number(fields.exponent)]?.exponent ?? null,
    });
    const name = `${distanceText(race.count)} ${pool.unit}`;
    if (methods.every(({ estimate }) => estimate === null)) {
      return { ...seen, errors: { ...errors, swims: [nothingAnswers(methods, fields)] } };
    }
    return { ...seen, result: resultOf(methods, name, goal.time) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { ...seen, errors: { ...errors, swims: [error.message] } };
  }
}

/** Why no method answers: what speaks against the swims typed, or what to type. */
function nothingAnswers(methods: readonly Method[], { swims, reps }: CompareFields): string {
  if (swims.trim() === '' && reps.trim() === '') {
    return 'Enter two races or trials, or a reading set.';
  }
  return [...new Set(methods.flatMap(({ lacks }) => lacks ?? []))].join(' ');
}

function resultOf(
  methods: readonly Method[],
  race: string,
  goal: Hundredths | null,
): CompareResult {
  const answered = methods
    .flatMap(({ name, estimate }) => (estimate ? [{ name, estimate }] : []))
    .sort((a, b) => a.estimate.time - b.estimate.time);
  const comparison = compareEstimates(
    answered.map(({ estimate }) => estimate),
    goal ?? undefined,
  );
  const sentences = [
    spanSentence(answered, race),
    ...(goal === null ? [] : [goalSentence(goal, comparison)]),
  ];
  return {
    race,
    goal,
    answered,
    comparison,
    methods,
    sentence: sentences.join(' '),
    cautions: [
      answered.length === 1
        ? 'One method answers here. Where others can, they disagree: lay them beside it before you trust it.'
        : 'Each takes different things for granted, so none is averaged with another. The difference is the finding.',
      ...comparison.cautions.map(({ message }) => message),
    ],
  };
}

function spanSentence(answered: readonly Answered[], race: string): string {
  const [fastest, slowest] = [answered[0], answered.at(-1)];
  if (fastest === undefined || slowest === undefined) return '';
  const first = `${fastest.name}: ${formatTime(fastest.estimate.time)}`;
  if (answered.length === 1) return `One estimate for ${race}. ${first}.`;
  const apart = gapText((slowest.estimate.time - fastest.estimate.time) as Hundredths);
  return `${answered.length} estimates for ${race}, ${apart} apart. ${first}. ${slowest.name}: ${formatTime(slowest.estimate.time)}.`;
}
