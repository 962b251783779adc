import { type Caution, cautionsWhere } from '../caution.js';
import { fieldsOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { distanceOf, type Pool, poolOf } from '../course/pool.js';

/** The race a set is read for. */
export interface Race {
  /** The race's distance, in the unit of its own pool. */
  readonly distance: number;
  /** The pool of the race; the set's own unless given. */
  readonly pool?: Pool;
}

/** A race out of plain data, held against the pool of the set. */
export function raceOf(
  value: unknown,
  setPool: Pool,
): {
  readonly distance: number;
  /** The distance in the unit of the set's pool. */
  readonly inSetUnit: number;
  readonly cautions: readonly Caution[];
} {
  const race = fieldsOf(value, 'The race');
  const distance = distanceOf(race['distance'], 'The race distance');
  const pool = race['pool'] === undefined ? setPool : poolOf(race['pool'], "The race's pool");
  return {
    distance,
    inSetUnit: convertDistance(distance, pool.unit, setPool.unit),
    cautions: cautionsWhere([
      pool.length !== setPool.length || pool.unit !== setPool.unit,
      'course-differs',
      'The race is in another pool than the set: turns and their push-offs are not allowed for.',
    ]),
  };
}
