import { type CurrentReading, isPacingError, readCurrent } from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readTimeText } from '~/ui/time-text';
import type { WaterFields } from './fields';

/** A current read out of two times, and over what distance. */
export interface CurrentRead {
  readonly reading: CurrentReading;
  readonly distance: number;
}

export type Read =
  | { readonly read: CurrentRead; readonly errors?: never }
  | { readonly read?: never; readonly errors: Readonly<Record<string, string>> };

/** Reads the current out of the times of one leg, out and back. */
export function currentFrom(fields: WaterFields): Read {
  const length = readCountText(fields.length, 'Distance one way', { least: 10, most: 20_000 });
  const window = plausibleTimes(length.count ?? 100);
  const out = readTimeText(fields.out, 'Time out', window);
  const back = readTimeText(fields.back, 'Time back', window);
  const errors = Object.fromEntries(
    Object.entries({ length: length.error, out: out.error, back: back.error }).filter(
      (entry): entry is [string, string] => entry[1] !== null,
    ),
  );
  const [distance, there, home] = [length.count, out.time, back.time];
  if (distance === null || there === null || home === null) return { errors };
  try {
    return { read: { reading: readCurrent(distance, there, home), distance } };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { errors: { out: error.message } };
  }
}

/** The fields with the current that was read put into a plan of the same leg, out and back. */
export function withCurrent(fields: WaterFields, { reading, distance }: CurrentRead): WaterFields {
  const size = Math.abs(reading.current).toFixed(3);
  const [there, home] =
    Number(size) === 0
      ? ['still', 'still']
      : reading.current < 0
        ? ['against', 'with']
        : ['with', 'against'];
  const leg = (n: number, way: string) => ({
    [`distance-${n}`]: String(distance),
    [`current-${n}`]: way,
    [`size-${n}`]: way === 'still' ? '' : size,
    [`cross-${n}`]: '',
  });
  return {
    ...fields,
    job: 'plan',
    legs: '2',
    laps: '1',
    start: 'speed',
    speed: reading.speed.toFixed(3),
    ...leg(1, there),
    ...leg(2, home),
  };
}
