import {
  type Hundredths,
  hundredths,
  isPacingError,
  OPEN_WATER_EFFECTS,
  type OpenWaterEffectName,
  type OpenWaterLeg,
  type OpenWaterOptions,
  type OpenWaterPlan,
  planOpenWater,
  speedWithEffect,
} from 'backhalf';
import { plausibleTimes } from '~/ui/plausible';
import { readTimeText } from '~/ui/time-text';
import type { WaterFields } from './fields';
import { readLegs, readSpeed } from './legs';

/** A plan and the course it is for. */
export interface WaterPlan {
  readonly plan: OpenWaterPlan;
  readonly course: readonly OpenWaterLeg[];
  /** How many legs a lap has. */
  readonly legs: number;
  readonly laps: number;
  /** The finish at both ends of a published effect; none where none was chosen. */
  readonly effect: {
    readonly name: OpenWaterEffectName;
    readonly fast: Hundredths;
    readonly slow: Hundredths;
    readonly covers: string;
  } | null;
}

export type Planned =
  | { readonly planned: WaterPlan; readonly errors?: never }
  | { readonly planned?: never; readonly errors: Readonly<Record<string, string>> };

/** The differences between halves that make sense. */
export const byWindow = { from: hundredths(1), to: hundredths(360_000) };

/** Plans the swim that the fields tell. */
export function planFrom(fields: WaterFields): Planned {
  const { lap, laps, errors: wrong } = readLegs(fields);
  const course = lap === null ? [] : Array.from({ length: laps }, () => lap).flat();
  const distance = course.reduce((sum, leg) => sum + leg.distance, 0);
  const errors: Record<string, string> = { ...wrong };
  const keep = <T>(name: string, value: T | null, error: string | null): T | undefined => {
    if (error !== null) errors[name] = error;
    return value ?? undefined;
  };
  const start = startOf(fields, distance);
  const from = keep(fields.start, start.options, start.error);
  const by = readTimeText(fields.by, 'Difference', byWindow);
  const faster = fields.split === 'faster' ? keep('by', by.time, by.error) : undefined;
  if (lap === null || from === undefined || Object.keys(errors).length > 0) return { errors };

  const options = { ...from, ...(faster !== undefined && { secondHalf: hundredths(-faster) }) };
  try {
    const plan = planOpenWater(course, options);
    return {
      planned: {
        plan,
        course,
        legs: lap.length,
        laps,
        effect: effectOf(fields, course, plan, options),
      },
    };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    const ofHalves = faster !== undefined && error.input === options.secondHalf;
    const refused = ofHalves ? 'by' : fields.start;
    return { errors: { [refused]: error.message } };
  }
}

/** The goals that make sense over a distance. */
export const goalWindow = (distance: number) => plausibleTimes(Math.max(distance, 100));

function startOf(
  fields: WaterFields,
  distance: number,
): { readonly options: OpenWaterOptions | null; readonly error: string | null } {
  if (fields.start === 'speed') {
    const { count, error } = readSpeed(fields.speed, 'Swimming speed', { least: 0.2, most: 3 });
    return { options: count === null ? null : { speed: count }, error };
  }
  const { time, error } =
    fields.start === 'goal'
      ? readTimeText(fields.goal, 'Finish wanted', goalWindow(distance))
      : readTimeText(fields.pace, 'Pace', plausibleTimes(100));
  if (time === null) return { options: null, error };
  return { options: fields.start === 'goal' ? { goal: time } : { pace: time }, error };
}

/** The same effort with a published gain of speed, at both its ends. */
function effectOf(
  { effect }: WaterFields,
  course: readonly OpenWaterLeg[],
  { speed }: OpenWaterPlan,
  { secondHalf }: OpenWaterOptions,
): WaterPlan['effect'] {
  if (!(effect in OPEN_WATER_EFFECTS)) return null;
  const name = effect as OpenWaterEffectName;
  const { low, high, covers } = speedWithEffect(speed, name);
  const finish = (at: number) =>
    planOpenWater(course, { speed: at, ...(secondHalf !== undefined && { secondHalf }) }).time;
  return { name, fast: finish(high), slow: finish(low), covers };
}
