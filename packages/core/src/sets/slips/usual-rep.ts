import type { Lap } from '../../splits/slips/lap-list.js';

/** How many of the other reps, the nearest ones, tell what is usual: so that a set may fade. */
const NEAREST = 12;

/** What the other reps around one say of it. */
export interface UsualRep {
  /** The usual laps: their distances, and the middle of their times. */
  readonly laps: readonly Lap[];
  /** How far the other reps scatter around each, as a share of it. */
  readonly scatter: readonly number[];
  /** For each touch but the last, the usual share of the lap before it in the two laps around it. */
  readonly shares: readonly number[];
  /** How far the other reps scatter around each share. */
  readonly shareScatter: readonly number[];
}

/** The middle of some reps, at least one, all with the same marks. */
export function usualRep(reps: readonly (readonly Lap[])[]): UsualRep {
  const model = reps[0] as readonly Lap[];
  const times = model.map((_, k) => reps.map((laps) => (laps[k] as Lap).time));
  const shares = model.slice(1).map((_, k) => reps.map((laps) => shareOf(laps, k)));
  const middles = times.map(middleOf);
  return {
    laps: model.map(({ distance }, k) => ({ distance, time: middles[k] as number })),
    scatter: times.map((all, k) => scatterOf(all) / (middles[k] as number)),
    shares: shares.map(middleOf),
    shareScatter: shares.map(scatterOf),
  };
}

/** The share of lap `k`, counted from 0, in itself and the next. */
export function shareOf(laps: readonly Lap[], k: number): number {
  const [a, b] = [laps[k] as Lap, laps[k + 1] as Lap];
  return a.time / (a.time + b.time);
}

/** A time shared out over laps as they usually share it, the running total rounded. */
export function sharedOut(time: number, usual: readonly Lap[]): readonly Lap[] {
  const whole = usual.reduce((sum, lap) => sum + lap.time, 0);
  let run = 0;
  let told = 0;
  return usual.map((lap) => {
    run += lap.time;
    const part = { ...lap, time: Math.round((time * run) / whole) - told };
    told += part.time;
    return part;
  });
}

/** The reps nearest to the one `at`, without it, from a list of which `before` come before it. */
export function nearestTo(at: number, reps: readonly number[], before: number): readonly number[] {
  const start = Math.max(0, Math.min(before - NEAREST / 2, reps.length - NEAREST - 1));
  return reps.slice(start, start + NEAREST + 1).filter((rep) => rep !== at);
}

function middleOf(values: readonly number[]): number {
  const sorted = [...values].sort((x, y) => x - y);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] as number) + (sorted[Math.ceil(half)] as number)) / 2;
}

/** The middle distance from the middle, made to agree with a standard deviation where all is chance. */
function scatterOf(values: readonly number[]): number {
  const middle = middleOf(values);
  return 1.4826 * middleOf(values.map((value) => Math.abs(value - middle)));
}
