import { fieldsOf, itemsOf, numberOf } from '../check.js';
import { snap } from '../course/pool.js';
import { PacingError } from '../errors.js';

/** A straight leg from buoy to buoy, and how the water moves along it. */
export interface OpenWaterLeg {
  /** Its length along the course, in metres. */
  readonly distance: number;
  /** Water speed along the leg, in metres per second: above zero with the swimmer; 0 unless given. */
  readonly current?: number;
  /** Water speed across the leg, in metres per second, from either side; 0 unless given. */
  readonly cross?: number;
}

/** A leg, or the part of one on either side of halfway. */
export interface Stretch extends Required<OpenWaterLeg> {
  /** Which leg it is, a count from 1. */
  readonly leg: number;
}

/** Swimming speeds that make sense, in metres per second: slower is drifting, faster is no swimmer. */
export const SPEEDS = { min: 0.1, max: 4 };

const WATER = { min: -10, max: 10 };

export function speedOf(value: unknown, what: string): number {
  return numberOf(value, what, SPEEDS);
}

export function waterSpeedOf(value: unknown, what: string): number {
  return numberOf(value, what, WATER);
}

/** The legs out of plain data. */
export function legsOf(value: unknown): readonly Stretch[] {
  const legs = itemsOf(value, 'The legs').map((item, i) => {
    const name = `Leg ${i + 1}`;
    const { distance, current = 0, cross = 0 } = fieldsOf(item, name);
    return {
      leg: i + 1,
      distance: numberOf(distance, `${name}'s distance`, { min: 1, max: 1e6 }),
      current: waterSpeedOf(current, `${name}'s current`),
      cross: waterSpeedOf(cross, `${name}'s cross current`),
    };
  });
  if (legs.length > 0) return legs;
  throw new PacingError('wrong-shape', 'The course has no leg; add at least one.', value);
}

/** The course cut at half its distance; a leg across halfway is in both parts. */
export function cutAtHalf(
  legs: readonly Stretch[],
): readonly [first: readonly Stretch[], second: readonly Stretch[]] {
  const first: Stretch[] = [];
  const second: Stretch[] = [];
  let left = legs.reduce((sum, { distance }) => sum + distance, 0) / 2;
  for (const leg of legs) {
    const before = snap(Math.min(leg.distance, Math.max(left, 0)));
    const after = snap(leg.distance - before);
    if (before > 0) first.push({ ...leg, distance: before });
    if (after > 0) second.push({ ...leg, distance: after });
    left -= leg.distance;
  }
  return [first, second];
}

/** Speed made good along the leg, in metres per second; 0 where the swimmer makes no headway. */
export function groundSpeed(speed: number, { current, cross }: Stretch): number {
  if (speed <= Math.abs(cross)) return 0;
  return Math.max(0, Math.sqrt((speed - cross) * (speed + cross)) + current);
}

/** How far to aim upstream so as not to be carried off the leg, in degrees; no sign, since `cross` has none. */
export function headingAcross(speed: number, cross: number): number {
  return (Math.asin(Math.abs(cross) / speed) * 180) / Math.PI;
}

/** Refuses a speed that makes no headway on some leg. */
export function checkHeadway(legs: readonly Stretch[], speed: number): void {
  const stuck = legs.find((each) => groundSpeed(speed, each) === 0);
  if (stuck === undefined) return;
  const message = `On leg ${stuck.leg} the water is too strong for a swimming speed of ${Number(speed.toFixed(3))} m/s; choose another course or calmer water.`;
  throw new PacingError('current-too-strong', message, speed);
}

/** Seconds for all legs at one swimming speed; without end where it makes no headway. */
export function secondsFor(legs: readonly Stretch[], speed: number): number {
  return legs.reduce((sum, leg) => sum + leg.distance / groundSpeed(speed, leg), 0);
}

/** The one swimming speed that covers the legs in a time: more speed, less time, so halve the gap. */
export function speedFor(legs: readonly Stretch[], seconds: number): number {
  checkHeadway(legs, SPEEDS.max);
  let { min: slow, max: fast } = SPEEDS;
  if (secondsFor(legs, fast) > seconds || secondsFor(legs, slow) < seconds) {
    const message = `That time asks for a swimming speed outside ${slow} to ${fast} m/s; check times and distances.`;
    throw new PacingError('out-of-range', message, seconds);
  }
  for (let step = 0; step < 64; step += 1) {
    const middle = (slow + fast) / 2;
    if (secondsFor(legs, middle) > seconds) slow = middle;
    else fast = middle;
  }
  return fast;
}
