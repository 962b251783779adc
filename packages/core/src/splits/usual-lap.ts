import { meanOf } from '../statistics.js';
import type { Lap } from './lap-list.js';

/**
 * What a dive and the first lap are worth, in hundredths of a second: the start credits of the four
 * distances in start-credit.ts lie on both sides of it. A swim may also start from a push, without it.
 */
export const DIVE = 240;

/** How far to look for laps that tell how uneven a swim is, on either side. */
const REACH = 4;

/** The paces around a stretch of laps, in hundredths per unit of distance. */
export interface Usual {
  /** The quicker of the two nearest laps. */
  readonly quick: number;
  /** The slower of the two. */
  readonly slow: number;
  /** How much one lap differs from the next around there, as a mean ratio less one. */
  readonly unevenness: number;
  /** How many laps all this rests on. */
  readonly laps: number;
}

/** The pace of a lap, in hundredths per unit; the first as it would be without the dive. */
const paceOf = (laps: readonly Lap[], i: number): number => {
  const { time, distance } = laps[i] as Lap;
  return (i === 0 ? time + DIVE : time) / distance;
};

/**
 * The usual pace around laps `from` to `to`, read off the laps next to them: one on each side where
 * there is one, so that a slow drift, a change of stroke and laps that alternate all stay between the
 * two. The last lap is asked last, since swimmers sprint it. Null where no other lap is there.
 */
export function usualAround(laps: readonly Lap[], from: number, to: number): Usual | null {
  const last = laps.length - 1;
  const near = [from - 1, to + 1, from - 2, to + 2].filter((i) => i >= 0 && i < last);
  if (last > to) near.push(last);
  const paces = near.slice(0, 2).map((i) => paceOf(laps, i));
  if (paces.length === 0) return null;

  const around: number[] = [];
  for (let i = Math.max(0, from - REACH); i <= Math.min(last, to + REACH); i++) {
    if (i < from || i > to) around.push(paceOf(laps, i));
  }
  const steps = around.slice(1).map((pace, i) => {
    const before = around[i] as number;
    return Math.abs(pace - before) / Math.min(pace, before);
  });
  return {
    quick: Math.min(...paces),
    slow: Math.max(...paces),
    unevenness: steps.length === 0 ? 0 : meanOf(steps),
    laps: around.length,
  };
}
