import {
  type DeckPlan,
  type DeckReading,
  formatTime,
  type Pool,
  readSet,
  type Splits,
} from 'backhalf';
import type { SetFields } from '~/calculators/read-a-set/model';
import { queryOf } from '~/ui/address';
import { clockText } from '~/ui/wording';
import type { DeckFields } from './fields';

/** What came out for one swimmer. */
export interface SwimmerResult {
  readonly name: string;
  /** Reps with a finish, and all that were to be swum. */
  readonly timed: string;
  readonly mean: string;
  /** Mean second half; a dash where no rep has a halfway touch. */
  readonly secondHalf: string;
  readonly honestPace: string;
  /** Where the reps stand in the calculator that reads a set; none without reps. */
  readonly href: string | null;
}

/** What came out for each swimmer, by name in the order of the list. */
export function swimmerResults(
  fields: DeckFields,
  pool: Pool,
  plan: DeckPlan,
  reading: DeckReading,
): readonly SwimmerResult[] {
  return reading.swims.map(({ name, reps }) => {
    const swum = reps.filter((rep) => rep !== null);
    const timed = `${swum.length} of ${plan.reps}`;
    if (swum.length === 0) {
      return { name, timed, mean: '–', secondHalf: '–', honestPace: '–', href: null };
    }
    const { repDistance, sendOff } = plan;
    const { average, halves, honestPace } = readSet({ pool, repDistance, reps: swum, sendOff });
    return {
      name,
      timed,
      mean: formatTime(average),
      secondHalf: halves === null ? '–' : formatTime(halves.second),
      honestPace: honestPace === null ? '–' : formatTime(honestPace),
      href: hrefOf(fields, plan, swum),
    };
  });
}

/**
 * The reps as the watch showed them, one a line, for the calculator that reads a set. Only the type of
 * its fields is taken from there: this page must not bring along what that one works with.
 */
function hrefOf(fields: DeckFields, plan: DeckPlan, reps: readonly Splits[]): string {
  const { pool, length, unit } = fields;
  const set: SetFields = {
    pool,
    length,
    unit,
    distance: String(plan.repDistance),
    kind: 'running',
    reps: reps.map(({ marks }) => marks.map(({ time }) => formatTime(time)).join(' ')).join('\n'),
    known: 'sendOff',
    rest: formatTime(plan.sendOff),
    race: '1500',
  };
  return `/calculators/read-a-set/?${queryOf(set)}`;
}

/** Rep times, one column a swimmer; a dash where the finish is missing. */
export function repTable({ swims }: DeckReading, { reps: many, repDistance, sendOff }: DeckPlan) {
  const longest = swims[0]?.reps.length ?? 0;
  return {
    caption: `Rep times, ${many} × ${repDistance} on ${clockText(sendOff)}`,
    columns: ['Rep', ...swims.map(({ name }) => name)],
    rows: Array.from({ length: longest }, (_, r) => ({
      head: String(r + 1),
      cells: swims.map(({ reps }) => {
        const finish = reps[r]?.marks.at(-1);
        return finish === undefined ? '–' : formatTime(finish.time);
      }),
    })),
  };
}

/** Touches, doubts and gaps in one sentence. */
export function sentenceOf(touches: number, doubtful: number, missing: number): string {
  const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;
  return `${many(touches, 'touch', 'touches')}, ${many(doubtful, 'is', 'are')} doubtful, ${many(missing, 'mark has', 'marks have')} none.`;
}
