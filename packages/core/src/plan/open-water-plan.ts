import type { Caution } from '../caution.js';
import type { Mark } from '../splits/splits.js';
import type { Hundredths } from '../time/hundredths.js';

/** What an open-water plan starts from: exactly one of speed, pace and goal. */
export interface OpenWaterOptions {
  /** Swimming speed through the water, in metres per second. */
  readonly speed?: number;
  /** Pace in still water, in hundredths of a second per 100 m. */
  readonly pace?: Hundredths;
  /** The finish time wanted, in hundredths of a second. */
  readonly goal?: Hundredths;
  /**
   * By how much the second half is to differ from the first beyond what an even effort gives (in a race plan it is
   * the whole difference), in hundredths of a second; below zero is a negative split. Even effort unless given.
   */
  readonly secondHalf?: Hundredths;
}

/** One leg of the plan, or the part of it before or after halfway. */
export interface OpenWaterRow {
  /** Which leg, a count from 1. */
  readonly leg: number;
  /** Its length, in metres. */
  readonly distance: number;
  /** Its time, in hundredths of a second. */
  readonly time: Hundredths;
  /** Time since the start at its end, in hundredths of a second: what the watch shows at the buoy. */
  readonly elapsed: Hundredths;
  /** Speed through the water, in metres per second. */
  readonly swimSpeed: number;
  /** Speed made good along the leg, in metres per second. */
  readonly groundSpeed: number;
  /** How far to aim upstream of the leg's line, in degrees. */
  readonly heading: number;
}

/** A plan through moving water, leg by leg; see {@link planOpenWater}. */
export interface OpenWaterPlan {
  /** The legs in order; one that lies across halfway is two rows. */
  readonly rows: readonly OpenWaterRow[];
  /** Half the distance, in metres, and the time to show there: the turn buoy of an out-and-back. */
  readonly halfway: Mark;
  /** The finish time, in hundredths of a second. */
  readonly time: Hundredths;
  /** The speed through the water that an even effort takes, in metres per second. */
  readonly speed: number;
  /** What the same course would take at that speed without any current, in hundredths of a second. */
  readonly stillWater: Hundredths;
  /** Finish minus still water, in hundredths of a second: above zero on every out-and-back. */
  readonly currentCost: Hundredths;
  /** What to know before swimming it. */
  readonly cautions: readonly Caution[];
}
