import {
  formatSet,
  type Hundredths,
  hundredths,
  isPacingError,
  type PacingError,
  type Pool,
  parseSet,
  type SetNote,
  type SetTotals,
  setTotals,
} from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { type PoolFields, poolShape, readPool } from '~/ui/pool-text';
import { readTimeText } from '~/ui/time-text';
import { clockText } from '~/ui/wording';
import { type Slip, slipAt } from './slip';

export interface WriteFields extends PoolFields, Readonly<Record<string, string>> {
  /** The set in the notation. */
  readonly set: string;
  /** Pace per 100 of all that says nothing of its time; may be empty. */
  readonly pace: string;
  /** Whose send-offs, where a set has several. */
  readonly lane: string;
}

export const shape: Shape<WriteFields> = { ...poolShape, set: 'any', pace: 'any', lane: 'any' };

export const paceWindow = plausibleTimes(100);

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: WriteFields): string =>
  `/calculators/write-a-set/?${queryOf(fields)}`;

export interface WriteView {
  readonly pool: Pool | null;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: Readonly<Record<string, string>>;
  /** The place in the set that could not be read. */
  readonly slip: Slip | null;
  /** None while something is still wrong. */
  readonly result: WriteResult | null;
}

export interface WriteResult {
  readonly unit: string;
  /** The set written in one way only. */
  readonly kept: string;
  /** The readings that were taken where handouts disagree. */
  readonly readings: readonly SetNote[];
  readonly totals: SetTotals;
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: WriteFields): WriteView {
  const { pool, error: poolError } = readPool(fields);
  const pace =
    fields.pace.trim() === ''
      ? { time: null, error: null }
      : readTimeText(fields.pace, 'Pace per 100', paceWindow);
  const lane = readCountText(fields.lane, 'Lane', { most: 100 });
  const errors = { length: poolError, set: null, pace: pace.error, lane: lane.error };
  const not = (error: PacingError | null, field: string): WriteView => ({
    pool,
    errors: found({ ...errors, [field]: error?.message ?? null }),
    slip: error?.position === undefined ? null : slipAt(fields.set, error.position),
    result: null,
  });
  if (fields.set.trim() === '') {
    const named = { ...errors, set: 'Enter the set, like 10 x 100 on 1:30.' };
    return { pool, errors: found(named), slip: null, result: null };
  }
  try {
    const set = parseSet(fields.set);
    if (pool === null || lane.count === null || pace.error !== null) return not(null, 'set');
    const given = pace.time === null ? {} : { pace: pace.time };
    const totals = setTotals(set, { pool, lane: lane.count, ...given });
    const breath = set.notes.filter(({ code }) => code === 'breath-holding');
    const cautions = [...breath, ...totals.cautions].map(({ message }) => message);
    const readings = set.notes.filter((note) => !breath.includes(note));
    const sentence = sentenceOf(totals, pool.unit);
    const kept = formatSet(set);
    const result = { unit: pool.unit, kept, readings, totals, sentence, cautions };
    return { pool, errors: {}, slip: null, result };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    const ofLane = error.code === 'out-of-range' && error.input === lane.count;
    return not(error, ofLane ? 'lane' : 'set');
  }
}

function sentenceOf({ distance, reps, booked }: SetTotals, unit: string): string {
  const what = `${distance} ${unit} in ${reps} ${reps === 1 ? 'swim' : 'swims'}`;
  return booked === null
    ? `${what}; how long it takes is not known yet.`
    : `${what}, booked for ${clockText(booked)}.`;
}

const found = (all: Readonly<Record<string, string | null>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(all).filter((entry): entry is [string, string] => entry[1] !== null),
  );

/** Swims in a row that are alike. */
export interface Row {
  readonly reps: number;
  readonly distance: number;
  /** When the first of them starts, in hundredths of a second; or null. */
  readonly start: Hundredths | null;
  readonly swim: Hundredths | null;
  readonly rest: Hundredths | null;
}

/** The clock with swims that are alike in one row. */
export function rowsOf({ clock }: SetTotals): readonly Row[] {
  const rows: Row[] = [];
  for (const swim of clock) {
    const last = rows.at(-1);
    const alike =
      last?.distance === swim.distance && last.swim === swim.swim && last.rest === swim.rest;
    if (last !== undefined && alike) rows[rows.length - 1] = { ...last, reps: last.reps + 1 };
    else rows.push({ ...swim, reps: 1 });
  }
  return rows;
}

/** One swim of the picture, in hundredths of a second from the first start. */
export interface Bar {
  readonly from: Hundredths;
  readonly to: Hundredths;
}

/** More swims than this are no picture any more. */
const mostBars = 300;

/** Every swim as a bar; none where a time is not known, or there are too many to tell apart. */
export function barsOf({ clock }: SetTotals): readonly Bar[] {
  if (clock.length > mostBars) return [];
  const bars = clock.flatMap(({ start, swim }) =>
    start === null || swim === null ? [] : [{ from: start, to: hundredths(start + swim) }],
  );
  return bars.length === clock.length ? bars : [];
}
