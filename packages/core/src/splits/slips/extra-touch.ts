import { about, exactly, type Finding } from './finding.js';
import { type Lap, ratioOf } from './lap-list.js';
import { fits, usualLap } from './usual-lap.js';

// Choices of ours, as shares of a lap.
const CUT = 0.8; // each part of a lap that was cut in two is shorter than that
const WHOLE = 0.12; // how near to a lap both together must come

/** Laps `k` and `k + 1`, counted from 0, where they are one lap cut in two; or null. */
export function extraTouch(laps: readonly Lap[], k: number): Finding | null {
  const [a, b] = [laps[k], laps[k + 1]];
  const usual = usualLap(laps, k, k, k + 1);
  if (!a || !b || !usual || laps.length < 4) return null;
  const time = a.time + b.time;
  const cut = Math.max(a.time, b.time) < CUT * usual.low && fits(time, usual, WHOLE);
  if (!cut || ratioOf(a.distance, b.distance) > 1.001) return null;
  const why = `Laps ${k + 1} and ${k + 2} took ${exactly(a.time)} and ${exactly(b.time)}, together one usual lap of ${about(usual.mid)}: a touch was probably taken where there is no wall.`;
  return { kind: 'extra-touch', span: 2, size: 1, why, mend: [{ ...a, time }] };
}
