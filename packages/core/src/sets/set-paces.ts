import { countOf, fieldsOf } from '../check.js';
import { type Pool, poolOf } from '../course/pool.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';
import { timeAtPace } from '../time/pace.js';
import { valuesOf } from './notation/words.js';
import { restOf } from './notation/write-details.js';
import type { SetEffort, SetKind, SetStroke, SetSwims, SwimManner } from './planned-set.js';

/** What a set leaves open: how fast, in which lane, with how much rest between rounds. See {@link setTotals}. */
export interface SetPaces {
  /** Pace of all that no other pace is given for, in hundredths of a second per 100 of the pool's unit. */
  readonly pace?: Hundredths;
  /**
   * Paces by name, in hundredths of a second per 100 of the pool's unit. A kick, pull or drill goes by
   * its own; else an effort by its own; else the stroke decides.
   */
  readonly paces?: { readonly [Name in SetStroke | SetKind | SetEffort]?: Hundredths };
  /** Which lane's send-offs, a count from 1; 1 unless given. */
  readonly lane?: number;
  /** Rest between rounds that say nothing of it, in hundredths of a second; none unless given. */
  readonly restBetweenRounds?: Hundredths;
  /** The pool, so that each distance is checked to be whole lengths of it. */
  readonly pool?: Pool;
}

/** Those paces, checked. */
export interface CheckedPaces {
  readonly lane: number;
  readonly restBetweenRounds: Hundredths;
  readonly pool: Pool | undefined;
  /** The time of a swim, or null where there is neither a target nor a pace. */
  readonly timeOf: (swim: SetSwims, distance: number, manner: SwimManner) => Hundredths | null;
}

const NAMES = [...valuesOf('kind'), ...valuesOf('effort'), ...valuesOf('stroke')];

/** Paces out of plain data. */
export function pacesOf(value: unknown): CheckedPaces {
  const {
    pace,
    paces = {},
    lane = 1,
    restBetweenRounds = 0,
    pool,
  } = fieldsOf(value, 'The options');
  const overall = pace === undefined ? null : timeOf(pace, 'The pace');
  const given = fieldsOf(paces, 'The paces');
  const named: ReadonlyMap<string, Hundredths> = new Map(
    NAMES.filter((name) => given[name] !== undefined).map((name) => [
      name,
      timeOf(given[name], `The pace for ${name}`),
    ]),
  );
  const paceFor = ({ kind, effort, stroke }: SwimManner) =>
    [kind, effort, stroke].map((name) => name && named.get(name)).find(Boolean) || overall;
  return {
    lane: countOf(lane, 'The lane', 1, 100),
    restBetweenRounds: restOf(restBetweenRounds),
    pool: pool === undefined ? undefined : poolOf(pool),
    timeOf: ({ target }, distance, manner) => {
      if (target !== undefined) return target;
      const found = paceFor(manner);
      return found && timeAtPace(found, distance);
    },
  };
}
