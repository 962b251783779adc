import { CHAMPIONSHIP_LAPS } from './championship-laps.js';

/** How Olympic finalists spread a race over its laps. */
export interface ChampionshipShape {
  /** Women or men. */
  readonly sex: 'W' | 'M';
  /** Race distance, in metres. */
  readonly distance: number;
  /** How many swims it is the mean of, a count. */
  readonly swims: number;
  /** The laps of 50 m, each in parts of 10,000 of the mean lap, a ratio. */
  readonly laps: readonly number[];
}

/** The measured shape whose distance is nearest, by ratio: 400 is as far from 200 as from 800. */
export function championshipShape(sex: 'W' | 'M', metres: number): ChampionshipShape {
  const off = (distance: number) => Math.max(distance / metres, metres / distance);
  const shapes = CHAMPIONSHIP_LAPS.filter((shape) => shape.sex === sex);
  return shapes.reduce((a, b) => (off(b.distance) < off(a.distance) ? b : a));
}
