import { REFERENCE_EXPONENTS } from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { type PoolFields, poolShape } from '~/ui/pool-text';
import { type RestFields, restShape } from '~/ui/rest-text';

export interface CompareFields extends PoolFields, RestFields, Readonly<Record<string, string>> {
  /** The distance of the race that is estimated, in the pool's unit. */
  readonly race: string;
  /** May be empty. */
  readonly goal: string;
  /** A distance in the pool's unit and a time, one race or trial a line; may be empty. */
  readonly swims: string;
  /** Which published exponent, by its place in the list; `none` for none. */
  readonly exponent: string;
  /** A reading set, one rep a line; may be empty. */
  readonly reps: string;
  readonly distance: string;
  readonly kind: string;
}

export const shape: Shape<CompareFields> = {
  ...poolShape,
  ...restShape,
  race: 'any',
  goal: 'any',
  swims: 'any',
  exponent: ['none', ...REFERENCE_EXPONENTS.map((_, i) => String(i))],
  reps: 'any',
  distance: 'any',
  kind: ['halves', 'running'],
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: CompareFields): string =>
  `/calculators/compare/?${queryOf(fields)}`;
