import { numberOf } from '../check.js';
import { type Hundredths, nearestHundredth, timeOf } from '../time/hundredths.js';
import {
  checkHeadway,
  groundSpeed,
  headingAcross,
  speedOf,
  waterSpeedOf,
} from './open-water-legs.js';

/** What two swims over one leg, out and back, show. */
export interface CurrentReading {
  /** Swimming speed through the water, in metres per second. */
  readonly speed: number;
  /** Water speed on the way out, in metres per second; below zero it ran against the swimmer. */
  readonly current: number;
  /** What the current cost over out and back, in hundredths of a second; never below zero. */
  readonly cost: Hundredths;
}

/** How to swim straight across moving water. */
export interface CrossCurrent {
  /** How far to aim upstream of the buoy, in degrees. */
  readonly heading: number;
  /** Speed made good towards the buoy, in metres per second. */
  readonly groundSpeed: number;
  /** Metres of sideways drift for each 100 m swum without aiming off. */
  readonly driftPer100: number;
}

/**
 * The current along a leg, read from the times out and back, for a swimmer who swam both at one effort
 * in a current that did not change. The legs of {@link planOpenWater} take it.
 *
 * @param distance - The leg's length one way, in metres.
 * @param out - The time out, in hundredths of a second.
 * @param back - The time back, in hundredths of a second.
 * @returns Swimming speed and current in metres per second, and the cost in hundredths of a second.
 * @throws {@link PacingError} `out-of-range` for a distance outside 1 to 1,000,000 m; `not-a-time`;
 *   `too-large`.
 * @example
 * const { speed, current } = readCurrent(750, parseTime('11:00.00'), parseTime('9:00.00'));
 * speed.toFixed(3); // => '1.263'
 * current.toFixed(3); // => '-0.126'
 */
export function readCurrent(distance: number, out: Hundredths, back: Hundredths): CurrentReading {
  const length = numberOf(distance, 'The distance', { min: 1, max: 1e6 });
  const there = timeOf(out, 'The time out');
  const home = timeOf(back, 'The time back');
  const speedOut = (100 * length) / there;
  const speedBack = (100 * length) / home;
  return {
    speed: (speedOut + speedBack) / 2,
    current: (speedOut - speedBack) / 2,
    // out + back − 2·L/v, with the fractions worked together so that equal times cost exactly nothing.
    cost: nearestHundredth(((there - home) / (there + home)) * (there - home)),
  };
}

/**
 * Where to aim, and what speed is left, to swim straight across a current to a buoy.
 *
 * @param speed - Swimming speed through the water, in metres per second.
 * @param cross - Water speed across the course, in metres per second, from either side.
 * @returns The heading in degrees upstream, the speed made good in metres per second, and the drift in
 *   metres for each 100 m swum without aiming off.
 * @throws {@link PacingError} `current-too-strong` where the water is as fast as the swimmer or faster;
 *   `out-of-range` for speeds outside 0.1 to 4 m/s, or water faster than 10 m/s.
 * @example
 * const { heading, groundSpeed } = crossCurrent(1.3, 0.5);
 * heading.toFixed(2); // => '22.62'
 * groundSpeed.toFixed(2); // => '1.20'
 */
export function crossCurrent(speed: number, cross: number): CrossCurrent {
  const swum = speedOf(speed, 'The swimming speed');
  const water = Math.abs(waterSpeedOf(cross, 'The cross current'));
  const leg = { leg: 1, distance: 1, current: 0, cross: water };
  checkHeadway([leg], swum);
  return {
    heading: headingAcross(swum, water),
    groundSpeed: groundSpeed(swum, leg),
    driftPer100: (100 * water) / swum,
  };
}
