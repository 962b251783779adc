import { queryOf, type Shape } from '~/ui/address';
import { type PoolFields, poolShape } from '~/ui/pool-text';

export interface CriticalFields extends PoolFields, Readonly<Record<string, string>> {
  /** A distance in the pool's unit and a time, one trial a line. */
  readonly trials: string;
  /** The distance of the race, in the pool's unit. */
  readonly race: string;
  /** A set in set notation to follow the reserve through; may be empty. */
  readonly set: string;
  /** Pace per 100 of what the set gives no target for; may be empty. */
  readonly pace: string;
  /** The time constant in seconds, for the integral form alone; may be empty. */
  readonly tau: string;
}

export const shape: Shape<CriticalFields> = {
  ...poolShape,
  trials: 'any',
  race: 'any',
  set: 'any',
  pace: 'any',
  tau: 'any',
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: CriticalFields): string =>
  `/calculators/critical-speed/?${queryOf(fields)}`;
