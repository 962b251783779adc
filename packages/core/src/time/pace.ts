import { numberOf } from '../check.js';
import { type Hundredths, nearestHundredth, timeOf } from './hundredths.js';

/**
 * The pace of a swim: its time for each 100 (or another stretch), to the nearest hundredth.
 *
 * A rounded pace does not return the time: 16:40.00 for 1500 is 1:06.67 per 100, and fifteen of
 * those are 16:40.05. Keep the time; show the pace. The way back is {@link timeAtPace}; to another pool,
 * {@link convertPace}.
 *
 * @param time - The swim's time, in hundredths of a second.
 * @param distance - The swim's distance, in the pool's unit.
 * @param per - The stretch the pace is for, in the pool's unit; 100 unless given.
 * @returns The pace in hundredths of a second per stretch.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for a distance or stretch not above zero;
 *   `too-large`.
 * @example
 * formatTime(pacePer(parseTime('16:45.00'), 1500)); // => '1:07.00'
 * @example
 * formatTime(pacePer(parseTime('4:28.00'), 400, 50)); // => '33.50'
 */
export function pacePer(time: Hundredths, distance: number, per = 100): Hundredths {
  const swum = numberOf(distance, 'The distance', { above: 0 });
  const stretch = numberOf(per, 'The stretch of the pace', { above: 0 });
  return nearestHundredth((timeOf(time, 'The time') * stretch) / swum);
}

/**
 * The time of a distance swum at one pace, to the nearest hundredth: what a held pace makes of a rep or a
 * race. The pace of a time is {@link pacePer}.
 *
 * @param pace - The time for each stretch, in hundredths of a second.
 * @param distance - The distance to swim, in the pool's unit.
 * @param per - The stretch the pace is for, in the pool's unit; 100 unless given.
 * @returns The time in hundredths of a second.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for a distance or stretch not above zero;
 *   `too-large`.
 * @example
 * formatTime(timeAtPace(parseTime('1:07.00'), 1500)); // => '16:45.00'
 */
export function timeAtPace(pace: Hundredths, distance: number, per = 100): Hundredths {
  const toSwim = numberOf(distance, 'The distance', { above: 0 });
  const stretch = numberOf(per, 'The stretch of the pace', { above: 0 });
  return nearestHundredth((timeOf(pace, 'The pace') * toSwim) / stretch);
}
