import { choiceOf } from '../check.js';
import { PacingError } from '../errors.js';
import type { ConversionModel, Side } from './conversion-model.js';
import { pairedDistance, SEXES, type Stroke } from './event.js';
import { LCM, type Pool, SCM, SCY } from './pool.js';
import { samePool } from './same-pool.js';

/**
 * The published tables, by season; without its season a table has no name.
 *
 * - `collegiate-2021-22`: between 25 m and 25 yd, one factor for women and men.
 * - `collegiate-2023-24`: between 50 m and 25 yd, by stroke, distance and sex.
 */
export type CollegiateMethod = 'collegiate-2021-22' | 'collegiate-2023-24';

export const COLLEGIATE_METHODS: readonly CollegiateMethod[] = [
  'collegiate-2021-22',
  'collegiate-2023-24',
];

/** Thousandths by which a metre time is multiplied: for both, or for women and men. */
type Factors = Readonly<Record<Stroke, Readonly<Record<number, readonly number[]>>>>;

const same = [906];
const sprints = { 50: same, 100: same, 200: same };

const TABLES: Readonly<Record<CollegiateMethod, { metrePool: Pool; factors: Factors }>> = {
  'collegiate-2021-22': {
    metrePool: SCM,
    factors: {
      free: { ...sprints, 400: [1153], 800: [1153], 1500: [1013] },
      back: sprints,
      breast: sprints,
      fly: sprints,
      medley: { 100: same, 200: same, 400: same },
    },
  },
  'collegiate-2023-24': {
    metrePool: LCM,
    factors: {
      free: {
        50: [881, 870],
        100: [884, 873],
        200: [884, 875],
        400: [1122, 1115],
        800: [1130, 1115],
        1500: [985, 975],
      },
      back: { 100: [863, 845], 200: [867, 859] },
      breast: { 100: [880, 866], 200: [888, 868] },
      fly: { 100: [887, 878], 200: [891, 876] },
      medley: { 200: [877, 867], 400: [886, 875] },
    },
  },
};

/** Whether a table was published for these two pools, either way. */
export function tableFits(method: CollegiateMethod, a: Pool, b: Pool): boolean {
  const { metrePool } = TABLES[method];
  return (
    (samePool(a, metrePool) && samePool(b, SCY)) || (samePool(a, SCY) && samePool(b, metrePool))
  );
}

/** A published table between two pools; its own direction is metres to yards. */
export function collegiateModel(
  method: CollegiateMethod,
  { stroke, sex }: { readonly stroke: Stroke; readonly sex: unknown },
  from: Side,
  to: Side,
): ConversionModel {
  const wayBack = from.pool.unit === 'yd';
  const [metres, yards] = wayBack ? [to, from] : [from, to];
  const { factors, metrePool } = TABLES[method];
  // A 400 yd freestyle is no collegiate event, though 400 m is.
  const event = pairedDistance(stroke, metres.distance, 'm', 'yd') === yards.distance;
  const found = event && tableFits(method, from.pool, to.pool) && factors[stroke][metres.distance];
  if (!found) {
    const message = `The table ${method} has no factor for ${from.distance} ${from.pool.unit} ${stroke} between these pools; use the method "turns" with a gain per turn.`;
    throw new PacingError('no-published-factor', message, from.distance);
  }
  const [women = 0, men = women] = found;
  const thousandths = women !== men && choiceOf(sex, SEXES, 'The sex') === 'M' ? men : women;
  return {
    times: BigInt(thousandths),
    plus: 0n,
    over: 1000n,
    wayBack,
    factor: thousandths / 1000,
    source: `US collegiate qualifying standards (Division I), season ${method.slice(11).replace('-', '–')}, ${metrePool.length} m to 25 yd, as quoted by a news report.`,
  };
}
