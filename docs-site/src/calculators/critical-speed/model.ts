import {
  type CriticalSpeed,
  convertDistance,
  fitCriticalSpeed,
  formatTime,
  type Hundredths,
  isPacingError,
  type Pool,
  type Trial,
  timeAtPace,
  type Unit,
} from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readPool } from '~/ui/pool-text';
import { readTimeText } from '~/ui/time-text';
import { readTrials, type TrialsText, type TypedSwim } from '~/ui/trials-text';
import { distanceText } from '~/ui/wording';
import type { CriticalFields } from './fields';
import { type RaceRow, racesOf } from './races';
import type { Follow, FormOfRecovery } from './through-set';

export interface CriticalView {
  readonly pool: Pool | null;
  readonly trials: TrialsText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: {
    readonly length: string | null;
    readonly trials: readonly string[];
    readonly race: string | null;
    readonly set: string | null;
    readonly pace: string | null;
    readonly tau: string | null;
  };
  /** None while something that the fit needs is wrong. */
  readonly result: CriticalResult | null;
}

export interface CriticalResult {
  readonly unit: Unit;
  /** The trials as typed, shortest first. */
  readonly swims: readonly TypedSwim[];
  readonly model: CriticalSpeed;
  /** Per 100 of the pool's unit. */
  readonly pace: Hundredths;
  readonly races: readonly RaceRow[];
  /** The distance that was asked for. */
  readonly race: number;
  /** None where no set can be followed. */
  readonly forms: readonly FormOfRecovery[] | null;
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown; `follow` takes the reserve through a set. */
export function viewOf(fields: CriticalFields, follow: Follow): CriticalView {
  const { pool, error: poolError } = readPool(fields);
  const trials = readTrials(fields.trials, 'Trial');
  const race = readCountText(fields.race, 'Race distance', { least: 50, most: 25_000 });
  const pace =
    fields.pace.trim() === ''
      ? { time: null, error: null }
      : readTimeText(fields.pace, 'Pace', plausibleTimes(100));
  const tau =
    fields.tau.trim() === ''
      ? { count: null, error: null }
      : readCountText(fields.tau, 'Time constant', { most: 5000, whole: false });
  const fit = fitOf(trials, pool?.unit ?? 'm');
  const errors = {
    length: poolError,
    trials: fit.errors,
    race: race.error,
    set: null,
    pace: pace.error,
    tau: tau.error,
  };
  if (pool === null || race.count === null || fit.model === null) {
    return { pool, trials, errors, result: null };
  }
  const asked = { set: fields.set, pool, pace: pace.time, tau: tau.count };
  const { forms, error } = hasSet(fields) ? follow(fit.model, asked) : noSet;
  return {
    pool,
    trials,
    errors: { ...errors, set: error },
    result: resultOf(fit.model, trials.swims, race.count, pool.unit, forms),
  };
}

export const hasSet = ({ set }: CriticalFields): boolean => set.trim() !== '';
const noSet = { forms: null, error: null };

/** The fit, or why the trials allow none. */
function fitOf(
  { swims, errors }: TrialsText,
  unit: Unit,
): { readonly model: CriticalSpeed | null; readonly errors: readonly string[] } {
  if (errors.length > 0) return { model: null, errors };
  if (swims.length === 0) {
    return { model: null, errors: ['Enter two trials or more, one a line: distance, then time.'] };
  }
  try {
    // Once as typed: what speaks against a fit does so in any unit, and should name the typed one.
    fitCriticalSpeed(swims);
    const model = fitCriticalSpeed(swims.map((swim) => inMetres(swim, unit)));
    return { model, errors: [] };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { model: null, errors: [error.message.replace(/(?<=\d) m\b/g, ` ${unit}`)] };
  }
}

const inMetres = ({ distance, time }: TypedSwim, unit: Unit): Trial => ({
  distance: convertDistance(distance, unit, 'm'),
  time,
});

function resultOf(
  model: CriticalSpeed,
  typed: readonly TypedSwim[],
  race: number,
  unit: Unit,
  forms: CriticalResult['forms'],
): CriticalResult {
  const races = racesOf(model.trials, model, race, unit);
  const pace = timeAtPace(model.pace, convertDistance(100, unit, 'm'));
  const asked = races.find(({ distance }) => distance === race)?.settles;
  const promised =
    asked === undefined || typeof asked === 'string'
      ? ''
      : `, and ${formatTime(asked.time)} for ${distanceText(race)} ${unit}`;
  return {
    unit,
    swims: [...typed].sort((a, b) => a.distance - b.distance),
    model,
    pace,
    races,
    race,
    forms,
    sentence: `Critical pace ${formatTime(pace)} per 100 ${unit} with a reserve of ${distanceText(Math.round(convertDistance(model.reserve, 'm', unit)))} ${unit}${promised}.`,
    cautions: model.cautions.map(({ message }) => message),
  };
}
