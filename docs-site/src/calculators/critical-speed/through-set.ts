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

/** One form of recovery, and what it makes of the set. */
export interface FormOfRecovery {
  readonly name: string;
  /** None where the form lacks its time constant. */
  readonly trace: ReserveTrace | null;
}

export interface ThroughSet {
  /** None while no set was typed or something is wrong with it. */
  readonly forms: readonly FormOfRecovery[] | null;
  readonly error: string | null;
}

interface Asked {
  readonly set: string;
  readonly pool: Pool;
  readonly pace: Hundredths | null;
  readonly tau: number | null;
}

/** Follows the reserve through the set by all three forms; an empty set is no error. */
export function throughSet(model: CriticalSpeed, { set, pool, pace, tau }: Asked): ThroughSet {
  if (set.trim() === '') return { forms: null, error: null };
  const parsed = safeParseSet(set);
  if (!parsed.ok) return { forms: null, error: parsed.error.message };
  const by = (recovery: Recovery) =>
    reserveThrough(parsed.value, model, { recovery, pool, ...(pace !== null && { pace }) });
  try {
    return {
      forms: [
        { name: 'Linear', trace: by({ form: 'linear' }) },
        { name: 'Differential', trace: by({ form: 'differential' }) },
        { name: 'Integral', trace: tau === null ? null : by({ form: 'integral', tau }) },
      ],
      error: null,
    };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { forms: null, error: error.message };
  }
}
