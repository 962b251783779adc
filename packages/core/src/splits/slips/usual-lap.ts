import { type Lap, ratioOf } from './lap-list.js';

/**
 * What a dive and the first lap are worth, in hundredths of a second: about the mean of the start
 * credits in start-credit.ts. A swim may also start from a push, without it.
 */
const DIVE = 240;

/** How many laps on either side tell how uneven a swim is. */
const REACH = 4;

/** What a lap would have taken at the pace of the laps around it, in hundredths of a second. */
export interface UsualLap {
  /** At the pace of the quicker neighbour. */
  readonly low: number;
  /** Between the two. */
  readonly mid: number;
  /** At the pace of the slower neighbour. */
  readonly high: number;
  /** 1 where the neighbour after is the slower, −1 where the one before is, 0 where neither can be said. */
  readonly drift: number;
}

/**
 * What lap `k` would have taken, judged by the laps outside `from` to `to`: by the next on each side
 * where there is one, so that a slow drift, a change of stroke and laps that alternate all lie between
 * the two. The last lap is asked last, since swimmers sprint it. Null where there is no other lap.
 */
export function usualLap(laps: readonly Lap[], k: number, from = k, to = k): UsualLap | null {
  const last = laps.length - 1;
  const near = [from - 1, to + 1, from - 2, to + 2].filter((i) => i >= 0 && i < last);
  if (last > to) near.push(last);
  const paces = near.slice(0, 2).flatMap((i) => pacesOf(laps, i));
  const lap = laps[k];
  const before = paces[0];
  if (before === undefined || lap === undefined) return null;

  const at = (pace: number): number =>
    k === 0 ? withDive(pace * lap.distance) : pace * lap.distance;
  const low = at(Math.min(...paces));
  const high = at(Math.max(...paces));
  const drift = paces.length === 2 ? Math.sign((paces[1] as number) - before) : 0;
  return { low, mid: (low + high) / 2, high, drift };
}

/** Whether a time lies between its neighbours', or beyond by no more than a share. */
export function fits(time: number, usual: UsualLap, within: number): boolean {
  return time >= usual.low * (1 - within) && time <= usual.high * (1 + within);
}

/** The pace of a lap, in hundredths per unit; of the first one as if it had been swum off a push. */
export function paceOf(laps: readonly Lap[], i: number, dive = DIVE): number {
  const { time, distance } = laps[i] as Lap; // only asked of laps that are there
  return (i === 0 ? time + dive : time) / distance;
}

/** As above, and as it stands where a dive would be too much of the lap to guess at. */
function pacesOf(laps: readonly Lap[], i: number): readonly number[] {
  const guess = i === 0 && (laps[0] as Lap).time < 10 * DIVE;
  return guess ? [paceOf(laps, 0, 0), paceOf(laps, 0)] : [paceOf(laps, i)];
}

/** The time of a first lap, off a dive; over a lap too short for that, half of it at least. */
const withDive = (time: number): number => Math.max(time - DIVE, time / 2);

/** How even the laps around a stretch are. */
export interface Around {
  /** By how much one lap differs from the next: a ratio less one. */
  readonly unevenness: number;
  /** How many laps that rests on, a count. */
  readonly count: number;
}

/** How even the laps around `from` to `to` are. */
export function around(laps: readonly Lap[], from: number, to: number): Around {
  const near: number[] = [];
  for (let i = Math.max(0, from - REACH); i < laps.length && i <= to + REACH; i++) {
    if (i < from || i > to) near.push(i);
  }
  const steps = near.slice(1).map((i, n) => {
    const before = near[n] as number;
    return (ratioOf(paceOf(laps, i), paceOf(laps, before)) - 1) / (i - before);
  });
  // The middle one, so that another slip nearby does not count.
  const [unevenness = 0] = steps.sort((x, y) => x - y).slice(Math.floor(steps.length / 2));
  return { unevenness, count: near.length };
}
