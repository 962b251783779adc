import { countOf } from '../check.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';

/**
 * The points of a swim against a base time, to weigh swims of different events: 1000 × (base / time)³, the
 * fraction dropped.
 *
 * Base times are published anew each year and are not part of this library. The swim comes first: swapped,
 * the two give a wrong score, not an error. The way back is {@link timeForPoints}.
 *
 * @param time - The swim's time, in hundredths of a second.
 * @param baseTime - The base time of the event, sex and course in that year's table, in hundredths of a
 *   second: the time that is worth 1000.
 * @returns The points, a count.
 * @throws {@link PacingError} `not-a-time`; `too-large` where the swim is faster than the base beyond
 *   all sense.
 * @example
 * points(parseTime('52.80'), parseTime('46.91')); // => 701
 * @see World Aquatics points: P = 1000 · (B / T)³, truncated, for tables later than 2009.
 */
export function points(time: Hundredths, baseTime: Hundredths): number {
  const swum = BigInt(timeOf(time, 'The time'));
  const worth = Number(thousandCubes(baseTime) / swum ** 3n);
  if (Number.isSafeInteger(worth)) return worth;
  const message = 'The time is too far below its base for whole points; check which is which.';
  throw new PacingError('too-large', message, time);
}

/**
 * The time for given points: the fastest time that still scores them, so that a hundredth less would
 * score more. Where no time scores exactly these, as in sprints, it is the time for the next score
 * above that some time does. For a goal in points; the way there is {@link points}.
 *
 * @param wanted - The points, a whole number from 1 (a count).
 * @param baseTime - The base time of the event, sex and course in that year's table, in hundredths of a
 *   second.
 * @returns The time in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` where the points are no whole number from 1 to a million,
 *   or no time is fast enough; `not-a-time`; `too-large`.
 * @example
 * formatTime(timeForPoints(700, parseTime('46.91'))); // => '52.81'
 * @see World Aquatics points, inverse rule: the fastest time that still gives the points.
 */
export function timeForPoints(wanted: number, baseTime: Hundredths): Hundredths {
  const asked = BigInt(countOf(wanted, 'The points'));
  const cubes = thousandCubes(baseTime);
  const slowest = slowestScoring(asked, cubes);
  if (slowest === 0n) {
    const message = 'No swim is fast enough for that many points; ask for fewer.';
    throw new PacingError('out-of-range', message, wanted);
  }
  const scored = cubes / slowest ** 3n;
  return hundredths(Number(slowestScoring(scored + 1n, cubes) + 1n));
}

/** 1000 · base³ is past what a number holds exactly, even for a 1500: hence big integers. */
function thousandCubes(baseTime: unknown): bigint {
  return 1000n * BigInt(timeOf(baseTime, 'The base time')) ** 3n;
}

/** The greatest time with at least these points, or 0 where there is none. */
function slowestScoring(wanted: bigint, cubes: bigint): bigint {
  let enough = 0n;
  let tooSlow = 1n;
  while (wanted * tooSlow ** 3n <= cubes) tooSlow *= 2n;
  while (tooSlow - enough > 1n) {
    const middle = (enough + tooSlow) / 2n;
    if (wanted * middle ** 3n <= cubes) enough = middle;
    else tooSlow = middle;
  }
  return enough;
}
