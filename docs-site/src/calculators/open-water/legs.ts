import type { OpenWaterLeg } from 'backhalf';
import { type CountText, readCountText } from '~/ui/count-text';
import { legField, type WaterFields } from './fields';

export interface LegsText {
  /** The legs of one lap; none where one of them does not read. */
  readonly lap: readonly OpenWaterLeg[] | null;
  /** How often it is swum. */
  readonly laps: number;
  readonly errors: Readonly<Record<string, string>>;
}

/** Reads a speed in metres per second, with its unit typed or not. */
export const readSpeed = (
  text: string,
  label: string,
  limits: { least: number; most: number },
): CountText =>
  readCountText(text.replace(/\s*m\s*\/\s*s\s*$/i, ''), label, { ...limits, whole: false });

/** The course that the fields tell: each leg with its water, with and against as a choice. */
export function readLegs(fields: WaterFields): LegsText {
  const errors: Record<string, string> = {};
  const read = (name: string, { count, error }: CountText): number => {
    if (error !== null) errors[name] = error;
    return count ?? 0;
  };
  const lap = Array.from({ length: Number(fields.legs) }, (_, i): OpenWaterLeg => {
    const n = i + 1;
    const distance = legField(fields, `distance-${n}`);
    const way = legField(fields, `current-${n}`);
    const size = legField(fields, `size-${n}`);
    const cross = legField(fields, `cross-${n}`);
    const speed =
      way === 'still'
        ? 0
        : read(`size-${n}`, readSpeed(size, `Current of leg ${n}`, { least: 0.01, most: 5 }));
    return {
      distance: read(
        `distance-${n}`,
        readCountText(distance, `Distance of leg ${n}`, { least: 10, most: 50_000 }),
      ),
      current: way === 'against' ? -speed : speed,
      cross:
        cross.trim() === ''
          ? 0
          : read(
              `cross-${n}`,
              readSpeed(cross, `Cross current of leg ${n}`, { least: 0, most: 5 }),
            ),
    };
  });
  const laps = read('laps', readCountText(fields.laps, 'Laps', { most: 50 }));
  return { lap: Object.keys(errors).length > 0 ? null : lap, laps, errors };
}
