import { type CriticalSpeed, type Hundredths, timeFromCriticalSpeed } from 'backhalf';

/** Between which times a distance would be swum, by the scatter of the trials. */
export interface BandPoint {
  readonly metres: number;
  readonly low: Hundredths;
  readonly high: Hundredths;
}

const points = 40;

/**
 * The 95 % prediction interval along the line, from half the shortest trial to a distance in metres;
 * empty for two trials, which show no scatter, and where the scatter leaves some distance without an end.
 */
export function bandOf(model: CriticalSpeed, to: number): readonly BandPoint[] {
  const shortest = model.trials[0]?.distance ?? to;
  const from = Math.max(shortest / 2, model.reserve + 1);
  if (model.intervals === null || from >= to) return [];
  const band = Array.from({ length: points + 1 }, (_, i) => {
    const metres = from + ((to - from) * i) / points;
    const { range } = timeFromCriticalSpeed(model, metres);
    return range && { metres, low: range.low, high: range.high };
  });
  return band.includes(null) ? [] : band.flatMap((point) => point ?? []);
}
