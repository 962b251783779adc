import {
  type Hundredths,
  hundredths,
  isPacingError,
  judgePlan,
  lengthsIn,
  type PaceCard,
  type PacingError,
  type PlanJudgement,
  type Pool,
  paceCard,
  planRace,
  type RaceOptions,
  type RacePlan,
  type RaceShape,
} from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readPool } from '~/ui/pool-text';
import { readTimeText } from '~/ui/time-text';
import { slowerOrFaster } from '~/ui/wording';
import {
  creditLabel,
  edgeTimes,
  gapLabel,
  liftLabel,
  type PlanFields,
  smallTimes,
  strides,
} from './fields';
import { readSwim, type SwimText } from './swim-text';

/** What one printed sheet holds in figures of 18 points. */
export const rowsToAColumn = 22;
const columns = 3;

type Errors = Readonly<
  Record<'length' | 'distance' | 'goal' | 'gap' | 'credit' | 'lift', string | null>
>;

export interface PlanView {
  readonly pool: Pool | null;
  readonly distance: number | null;
  readonly goal: Hundredths | null;
  readonly own: SwimText;
  readonly swum: SwimText;
  readonly errors: Errors;
  /** Strides whose card fits on one sheet, and the one that is used; counts of lengths. */
  readonly strides: readonly number[];
  readonly stride: number;
  /** None while something that the plan needs is wrong. */
  readonly result: PlanResult | null;
}

export interface PlanResult {
  /** With a mark for each row of the card. */
  readonly plan: RacePlan;
  readonly card: PaceCard;
  /** None where no swim stands beside the plan. */
  readonly judged: PlanJudgement | null;
  /** Whether the shape can be drawn: even, or halves that differ. */
  readonly drawn: boolean;
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: PlanFields): PlanView {
  const { pool, error: poolError } = readPool(fields);
  const { count, error: distanceError } = readCountText(fields.distance, 'Race distance', {
    least: 10,
    most: 25_000,
  });
  const lengths = wholeLengths(pool, count);
  const distance = lengths.error === null ? count : null;
  const goal = readTimeText(fields.goal, 'Goal time', plausibleTimes(count ?? 100));
  const drawn = fields.shape === 'even' || fields.shape === 'halves';
  const gap = readTimeText(fields.gap, gapLabel, smallTimes(goal.time));
  const credit = readOptional(fields.credit, creditLabel);
  const lift = readOptional(fields.lift, liftLabel);
  const own = readSwim({ times: fields.own, every: fields.ownEvery, kind: fields.ownKind }, pool);
  const missing = fields.shape === 'own' && own.swim === null && own.errors.length === 0;
  const swum = readSwim(
    { times: fields.swum, every: fields.swumEvery, kind: fields.swumKind },
    pool,
  );
  const fitting = strides.filter((n) => (lengths.count ?? 1) / n <= rowsToAColumn * columns);
  const stride = fitting.find((n) => String(n) === fields.every) ?? fitting[0] ?? 1;
  const seen: Omit<PlanView, 'result'> = {
    pool,
    distance,
    goal: goal.time,
    own: missing ? { ...own, errors: ['Enter the times of the earlier swim.'] } : own,
    swum,
    errors: {
      length: poolError,
      distance: distanceError ?? lengths.error,
      goal: goal.error,
      gap: fields.shape === 'halves' ? gap.error : null,
      credit: drawn ? credit.error : null,
      lift: drawn ? lift.error : null,
    },
    strides: fitting,
    stride,
  };
  const wrong = Object.values(seen.errors).some((error) => error !== null);
  const raceShape = shapeIn(fields, gap.time, own);
  if (wrong || pool === null || distance === null || goal.time === null || raceShape === null) {
    return { ...seen, result: null };
  }
  const asked: RaceOptions = {
    pool,
    distance,
    goal: goal.time,
    shape: raceShape,
    ...(drawn && credit.time !== null && { startCredit: credit.time }),
    ...(drawn && lift.time !== null && { finishLift: lift.time }),
  };
  try {
    return judge(seen, planned(asked, stride, drawn), asked);
  } catch (error) {
    if (!isPacingError(error)) throw error;
    const errors = { ...seen.errors, [fieldOf(error, fields)]: error.message };
    return { ...seen, errors, result: null };
  }
}

function planned(asked: RaceOptions, stride: number, drawn: boolean): PlanResult {
  const plan = planRace({ ...asked, every: asked.pool.length * stride });
  const card = paceCard(plan);
  const halfway =
    card.halfway === null || plan.difference === null
      ? 'one length, so there is no halfway wall'
      : `the watch must show ${card.halfway.text} at halfway, and the second half is ${slowerOrFaster(plan.difference)}`;
  return {
    plan,
    card,
    judged: null,
    drawn: drawn && plan.halves !== null,
    sentence: `${card.title}: ${halfway}.`,
    cautions: plan.cautions.map(({ message }) => message),
  };
}

/** Lays the swim beside the plan, where there is one; what is wrong with it leaves the plan standing. */
function judge(seen: Omit<PlanView, 'result'>, result: PlanResult, asked: RaceOptions): PlanView {
  if (seen.swum.swim === null) return { ...seen, result };
  try {
    const judged = judgePlan(planRace(asked), seen.swum.swim);
    return { ...seen, result: { ...result, judged } };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { ...seen, swum: { ...seen.swum, errors: [error.message] }, result };
  }
}

function wholeLengths(pool: Pool | null, distance: number | null) {
  if (pool === null || distance === null) return { count: null, error: null };
  try {
    return { count: lengthsIn(pool, distance), error: null };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { count: null, error: error.message };
  }
}

function shapeIn(fields: PlanFields, gap: Hundredths | null, own: SwimText): RaceShape | null {
  switch (fields.shape) {
    case 'halves':
      return gap && { secondHalf: fields.way === 'faster' ? hundredths(-gap) : gap };
    case 'W':
    case 'M':
      return { championship: fields.shape };
    case 'own':
      return own.swim && { profile: own.swim };
    default:
      return 'even';
  }
}

/** The field that can put right what the plan was refused for. */
function fieldOf({ code }: PacingError, fields: PlanFields): keyof Errors {
  if (code === 'halfway-not-bracketed' || fields.shape === 'halves') return 'gap';
  return fields.credit.trim() === '' ? 'goal' : 'credit';
}

function readOptional(text: string, label: string) {
  return text.trim() === '' ? { time: null, error: null } : readTimeText(text, label, edgeTimes);
}
