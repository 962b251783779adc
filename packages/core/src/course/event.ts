import type { Unit } from './pool.js';

/** A stroke; `medley` is the individual medley. */
export type Stroke = 'free' | 'back' | 'breast' | 'fly' | 'medley';

/** Women's (`W`) or men's (`M`) events. */
export type Sex = 'W' | 'M';

export const STROKES: readonly Stroke[] = ['free', 'back', 'breast', 'fly', 'medley'];
export const SEXES: readonly Sex[] = ['W', 'M'];

/** Freestyle events that stand for each other, in metres and in yards. */
const PAIRS = [
  { m: 400, yd: 500 },
  { m: 800, yd: 1000 },
  { m: 1500, yd: 1650 },
] as const;

/** The event's distance on the other side: its pair, or the same number. */
export function pairedDistance(stroke: Stroke, distance: number, from: Unit, to: Unit): number {
  const pair = stroke === 'free' && PAIRS.find((each) => each[from] === distance);
  return pair ? pair[to] : distance;
}
