import { about, exactly, type Finding } from './finding.js';
import { type Lap, ratioOf } from './lap-list.js';
import { retypings } from './retypings.js';
import { around, fits, type UsualLap, usualLap } from './usual-lap.js';

// Choices of ours, as ratios less one.
const OFF = [0.5, 0.2, 0.12]; // a lap this far off is looked into, by one, two or more laps to go by
const UNEVEN = 5; // times the unevenness of the laps around, where that is more
const FITS = 0.1; // how near its neighbours a mended lap must come
const ODD = 0.5; // a lap this far off is reported even where nothing explains it

/**
 * Faster than anyone swims a lap, off a dive and in either unit: 3.3 m or yd a second is 25 in 7.58 s.
 * A choice: it leaves room above the fastest opening laps there have been.
 */
const FASTEST = 3.3;
/** Below this distance the flight of a dive is most of the lap. */
const SHORT = 20;

/** Whether nobody swims that fast. */
export const isImpossible = ({ distance, time }: Lap): boolean =>
  distance >= SHORT && time * FASTEST < distance * 100;

/** What is wrong with lap `k`, counted from 0, by itself; or null. */
export function loneLap(laps: readonly Lap[], k: number): Finding | null {
  const lap = laps[k] as Lap; // the caller counts
  const usual = usualLap(laps, k);
  const start = `Lap ${k + 1} took ${exactly(lap.time)}`;
  const impossible = isImpossible(lap);
  if (usual !== null && (impossible || isOff(laps, k, usual, 0))) {
    const known = explain(lap, usual, start);
    if (known !== null) return known;
  }
  const unknown = { span: 1, size: 1, mend: null };
  if (impossible) {
    const why = `${start} over ${Math.round(lap.distance)}, faster than anyone swims.`;
    return { ...unknown, kind: 'impossible', why };
  }
  if (usual === null || !isOff(laps, k, usual, ODD)) return null;
  const why = `${start} where ${about(usual.mid)} is usual, and no common slip explains it.`;
  return { ...unknown, kind: 'odd-lap', why };
}

/** Whether a lap lies outside its neighbours by more than the laps around vary anyway. */
function isOff(laps: readonly Lap[], k: number, { low, high }: UsualLap, least: number): boolean {
  const { time } = laps[k] as Lap; // the caller counts
  const off = (time < low ? low / time : time / high) - 1;
  if (off < Math.min(...OFF)) return false;
  // Of two laps that differ by far the slower is the likelier slip, unless nobody swims the other.
  if (laps.length === 2 && (time < low || laps.some(isImpossible))) return false;
  const { count, unevenness } = around(laps, k, k);
  const base = OFF[Math.min(count, OFF.length) - 1] as number;
  return off > Math.max(base, UNEVEN * unevenness, least);
}

/** The common slip whose undoing brings the lap nearest to the usual; or null. */
function explain(lap: Lap, usual: UsualLap, start: string): Finding | null {
  const missed = { time: lap.time / 2, slip: null };
  const [best] = [missed, ...retypings(lap.time)]
    .filter(({ time }) => fits(time, usual, FITS))
    .sort((x, y) => ratioOf(x.time, usual.mid) - ratioOf(y.time, usual.mid));
  if (best === undefined) return null;
  const size = ratioOf(lap.time, usual.mid) - 1;
  if (best.slip !== null) {
    const why = `${start} where ${about(usual.mid)} is usual: it was probably typed with ${best.slip}.`;
    return { kind: 'typed', span: 1, size, why, mend: [{ ...lap, time: best.time }] };
  }
  const time = Math.round(best.time);
  const why = `${start}, about twice the usual ${about(usual.mid)}: a touch was probably missed, and two laps stand in one.`;
  const mend = [
    { ...lap, time },
    { ...lap, time: lap.time - time },
  ];
  return { kind: 'missed-touch', span: 1, size, why, mend };
}
