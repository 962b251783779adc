import type { Caution } from '../caution.js';
import type { Hundredths } from '../time/hundredths.js';
import type { TimeRange } from '../time/time-range.js';
import type { CollegiateMethod } from './collegiate.js';
import type { Sex, Stroke } from './event.js';
import type { Pool } from './pool.js';
import type { TurnOptions } from './turn-model.js';

/** How to convert: by a published table with its season, or by the turns. */
export type ConversionMethod = CollegiateMethod | 'turns';

/** A swim to convert. */
export interface SwimToConvert {
  /** Its time, in hundredths of a second. */
  readonly time: Hundredths;
  /** Its distance, in the unit of `from`. */
  readonly distance: number;
  /** Its stroke; `medley` is the individual medley. */
  readonly stroke: Stroke;
  /** Needed where the factors differ between women and men, as those of `collegiate-2023-24` do. */
  readonly sex?: Sex;
  /** The pool it was swum in. */
  readonly from: Pool;
}

/** How {@link convertTime} converts. */
export interface ConvertTimeOptions extends Partial<TurnOptions> {
  /** Unless given: `turns` where a gain is given, else the table published for these two pools. */
  readonly method?: ConversionMethod;
}

/** A converted time with all that it rests on. */
export interface Conversion {
  /** The converted time, in hundredths of a second. */
  readonly time: Hundredths;
  /** The distance it is for, in the unit of the new pool: 500 yd for a 400 m freestyle. */
  readonly distance: number;
  /** The method that was used. */
  readonly method: ConversionMethod;
  /** What the method multiplies by in its own direction, a ratio. */
  readonly factor: number;
  /** Whether it was used backwards: the time is then the slowest that converts to the given one. */
  readonly wayBack: boolean;
  /** By turns only: how many turns fewer the new swim has, a count; below zero for more. */
  readonly turnsFewer?: number;
  /** Where the figures come from. */
  readonly source: string;
  /** What studies measured between these pools, or null where nobody has. */
  readonly range: TimeRange | null;
  /** What to know before trusting the figure. */
  readonly cautions: readonly Caution[];
}
