import {
  type CriticalSpeed,
  type Hundredths,
  isPacingError,
  type Pool,
  type Recovery,
  type ReserveTrace,
  reserveThrough,
  safeParseSet,
} from 'backhalf';

/** One form of recovery, and what it makes of the set, or what that waits for. */
export interface FormOfRecovery {
  readonly name: string;
  readonly trace: ReserveTrace | string;
}

export interface ThroughSet {
  /** None while something is wrong with the set. */
  readonly forms: readonly FormOfRecovery[] | null;
  readonly error: string | null;
}

export interface AskedSet {
  readonly set: string;
  readonly pool: Pool;
  readonly pace: Hundredths | null;
  readonly tau: number | null;
}

export type Follow = (model: CriticalSpeed, asked: AskedSet) => ThroughSet;

/** Follows the reserve through the set by all three forms. */
export const throughSet: Follow = (model, { set, pool, pace, tau }) => {
  const parsed = safeParseSet(set);
  if (!parsed.ok) return { forms: null, error: parsed.error.message };
  const by = (recovery: Recovery) =>
    reserveThrough(parsed.value, model, { recovery, pool, ...(pace !== null && { pace }) });
  try {
    return {
      forms: [
        { name: 'Linear', trace: by({ form: 'linear' }) },
        { name: 'Differential', trace: by({ form: 'differential' }) },
        {
          name: 'Integral',
          trace: tau === null ? 'needs its time constant' : by({ form: 'integral', tau }),
        },
      ],
      error: null,
    };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { forms: null, error: error.message };
  }
};
