import type { Caution } from '../caution.js';
import { fieldsOf, numberOf } from '../check.js';
import { PacingError } from '../errors.js';
import {
  differenceOf,
  type Hundredths,
  hundredths,
  nearestHundredth,
  timeOf,
} from '../time/hundredths.js';
import { checkDifference } from './half-times.js';
import {
  checkHeadway,
  cutAtHalf,
  groundSpeed,
  headingAcross,
  legsOf,
  type OpenWaterLeg,
  type Stretch,
  secondsFor,
  speedFor,
  speedOf,
} from './open-water-legs.js';
import type { OpenWaterOptions, OpenWaterPlan, OpenWaterRow } from './open-water-plan.js';

const CAUTIONS: readonly Caution[] = [
  {
    code: 'open-water-safety',
    message:
      'Never swim open water alone or unsupervised; keep to the local rules on safety craft, water temperature and wetsuits, and ask a physician before cold water.',
  },
  {
    code: 'current-assumed',
    message: 'The currents are taken as stated and steady; tide and wind change them.',
  },
  {
    code: 'straight-line',
    message:
      'Each leg is swum straight from buoy to buoy; for how much further swimmers go, no figure is published.',
  },
];

const A_WEEK = 7 * 24 * 3600 * 100;

/**
 * Plans an open-water swim leg by leg: what the watch shows at each buoy. Never swim open water alone; the cautions
 * say what else was taken for granted.
 *
 * Ground speed on a leg is √(speed² − cross²) + current. Out and back in a current is never free: more
 * time is spent against it than with it, so 0.25 m/s costs a 1.25 m/s swimmer 4.2 %. A current is read from two
 * swims by {@link readCurrent}.
 *
 * @param legs - The legs in order; distances in metres, water speeds in metres per second.
 * @param options - One of `speed` (metres per second), `pace` (hundredths of a second per 100 m) and
 *   `goal` (hundredths of a second); `secondHalf`, a difference in hundredths of a second, below zero for a
 *   negative split.
 * @returns The plan: times in hundredths of a second, speeds in metres per second.
 * @throws {@link PacingError} `current-too-strong` where the water stops the swimmer on a leg;
 *   `out-of-range` where a speed outside 0.1 to 4 m/s would be needed, or a distance, current or time is
 *   beyond sense, or `secondHalf` is more than a quarter of the time; `wrong-shape` where there is no leg, or not exactly one of speed, pace and goal;
 *   `not-a-time`; `too-large`.
 * @example
 * const outAndBack = [{ distance: 750, current: -0.25 }, { distance: 750, current: 0.25 }];
 * const plan = planOpenWater(outAndBack, { speed: 1.25 });
 * formatTime(plan.halfway.time); // => '12:30.00'
 * formatTime(plan.currentCost); // => '50.00'
 * @example
 * const outAndBack = [{ distance: 750, current: -0.25 }, { distance: 750, current: 0.25 }];
 * const plan = planOpenWater(outAndBack, { goal: parseTime('20:50.00'), secondHalf: hundredths(-2000) });
 * formatTime(plan.halfway.time); // => '12:40.00'
 */
export function planOpenWater(
  legs: readonly OpenWaterLeg[],
  options: OpenWaterOptions,
): OpenWaterPlan {
  const course = legsOf(legs);
  const { secondHalf = 0, ...start } = fieldsOf(options, 'The options');
  const difference = differenceOf(secondHalf, 'The second half');
  const shift = difference / 200; // half of it, in seconds
  const speed = evenSpeed(course, start);
  checkHeadway(course, speed);
  checkDifference(difference, 100 * secondsFor(course, speed));

  const [first, second] = cutAtHalf(course);
  const speedIn = (half: readonly Stretch[], change: number): number =>
    change === 0 ? speed : speedFor(half, secondsFor(half, speed) + change);
  const speedOut = speedIn(first, -shift);
  const out = rowsOf(first, speedOut, 0);
  const home = rowsOf(second, speedIn(second, shift), secondsFor(first, speedOut));

  const distance = course.reduce((sum, leg) => sum + leg.distance, 0);
  const time = finishOf(home);
  const stillWater = nearestHundredth((100 * distance) / speed);
  return {
    rows: [...out, ...home],
    halfway: { distance: distance / 2, time: finishOf(out) },
    time,
    speed,
    stillWater,
    currentCost: hundredths(time - stillWater),
    cautions: CAUTIONS,
  };
}

function evenSpeed(course: readonly Stretch[], start: Record<string, unknown>): number {
  const { speed, pace, goal } = start;
  if ([speed, pace, goal].filter((each) => each !== undefined).length !== 1) {
    const message = 'A plan starts from a speed, a pace or a goal; give exactly one of them.';
    throw new PacingError('wrong-shape', message, start);
  }
  if (speed !== undefined) return speedOf(speed, 'The swimming speed');
  if (pace !== undefined) return speedOf(10_000 / timeOf(pace, 'The pace'), 'The pace, as a speed');
  const wanted = timeOf(goal, 'The goal');
  return speedFor(course, numberOf(wanted, 'The goal', { max: A_WEEK }) / 100);
}

/** Times by rounding the running total, so that the rows add up to the finish. */
function rowsOf(
  half: readonly Stretch[],
  swimSpeed: number,
  start: number,
): readonly OpenWaterRow[] {
  let seconds = start;
  return half.map((stretch) => {
    const before = nearestHundredth(seconds * 100);
    seconds += secondsFor([stretch], swimSpeed);
    const elapsed = nearestHundredth(seconds * 100);
    const { leg, distance, cross } = stretch;
    return {
      leg,
      distance,
      time: hundredths(elapsed - before),
      elapsed,
      swimSpeed,
      groundSpeed: groundSpeed(swimSpeed, stretch),
      heading: headingAcross(swimSpeed, cross),
    };
  });
}

const finishOf = (rows: readonly OpenWaterRow[]): Hundredths =>
  (rows[rows.length - 1] as OpenWaterRow).elapsed; // each half of a course has at least one row
