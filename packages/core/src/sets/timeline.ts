import { PacingError } from '../errors.js';
import type { Hundredths } from '../time/hundredths.js';
import { blocksOf } from './notation/blocks-of.js';
import { clockOf } from './set-clock.js';
import { pacesOf } from './set-paces.js';

/** One swim of a set of which all is known. */
export interface TimedSwim {
  /** In the pool's unit. */
  readonly distance: number;
  /** Its time, in hundredths of a second. */
  readonly swim: Hundredths;
  /** Rest after it in hundredths of a second, below zero for a missed send-off. */
  readonly rest: Hundredths;
}

/** Every swim of a planned set in order, out of plain data; refused where a time is not known. */
export function timelineOf(set: unknown, options: unknown): readonly TimedSwim[] {
  const { swims } = clockOf(blocksOf(set), pacesOf(options));
  return swims.map(({ distance, swim, rest }, i) => {
    if (swim === null) {
      const message = `Swim ${i + 1} of the set has no known time; give a pace for it, or a target in the set.`;
      throw new PacingError('set-incomplete', message, set);
    }
    if (rest !== null) return { distance, swim, rest };
    const message = `The rest after swim ${i + 1} is not known; write a send-off or a rest into the set.`;
    throw new PacingError('set-incomplete', message, set);
  });
}
