import { LCM, type Pool, SCM, SCY } from 'backhalf';
import { readCountText } from './count-text';

/** The fields that tell a pool. */
export interface PoolFields {
  /** `25yd`, `25m`, `50m`, or `other`, for which `length` and `unit` tell. */
  readonly pool: string;
  readonly length: string;
  readonly unit: string;
}

export const poolShape = {
  pool: ['25yd', '25m', '50m', 'other'],
  length: 'any',
  unit: ['m', 'yd'],
} as const;

const usual: Readonly<Record<string, Pool>> = { '25yd': SCY, '25m': SCM, '50m': LCM };

/** The pool the fields tell, or what would do. */
export function readPool(fields: PoolFields): { pool: Pool | null; error: string | null } {
  const known = usual[fields.pool];
  if (known !== undefined) return { pool: known, error: null };
  const { count, error } = readCountText(fields.length, 'Length of the pool', {
    least: 5,
    most: 200,
    whole: false,
  });
  const unit = fields.unit === 'yd' ? 'yd' : 'm';
  return { pool: count === null ? null : { length: count, unit }, error };
}
