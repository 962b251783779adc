import { alternates } from './alternates.js';
import { about, exactly, type Finding, seconds } from './finding.js';
import type { Lap } from './lap-list.js';
import { around, fits, type UsualLap, usualLap } from './usual-lap.js';

// Choices of ours, as shares of a lap unless said otherwise. What they find and what they pass over in
// published races is counted by a test.
const APART = 0.032; // two laps off towards each other by less are honest scatter
const UNEVEN = [0.06, 0.025]; // laps around that differ by more, two or more of them, ask for more
const ALONE = 0.15; // with a single lap to go by
const LEAST = 90; // hundredths: in short laps a hand on a watch scatters by more than all that
const SLACK = 0.02; // how far the one may lie within its neighbours if the other is off all the more
const SWAPPED = 0.015; // how near to their neighbours two exchanged laps must come
const FITS = 0.06; // and two laps with the touch between them moved
const FITS_LAST = 0.08; // and the last two, of which one may be sprinted or died on

interface Pair {
  readonly k: number;
  readonly laps: readonly Lap[];
  readonly a: Lap;
  readonly b: Lap;
  readonly usualA: UsualLap;
  readonly usualB: UsualLap;
}

/** The touch between laps `k` and `k + 1`, counted from 0, where it was taken late or early; or null. */
export function movedTouch(laps: readonly Lap[], k: number): Finding | null {
  const [a, b] = [laps[k], laps[k + 1]];
  const usualA = usualLap(laps, k, k, k + 1);
  const usualB = usualLap(laps, k + 1, k, k + 1);
  if (!a || !b || !usualA || !usualB) return null;
  const pair = { k, laps, a, b, usualA, usualB };
  return moved('late', pair) ?? moved('early', pair);
}

function moved(how: 'late' | 'early', pair: Pair): Finding | null {
  const { k, laps, a, b, usualA, usualB } = pair;
  const [offA, offB] = offTowards(how, pair);
  const both = (offA + offB) / 2;
  const isLast = k + 2 === laps.length;
  // A first lap may lack its dive, a last one may be sprinted: then the other has to show it alone.
  const shown = Math.min(both, k === 0 ? offB : both, isLast ? offA : both);
  if (shown < APART || Math.min(offA, offB) < -SLACK) return null;
  if (shown < leastShown(pair) || alternates(laps, k)) return null;

  const start = `Laps ${k + 1} and ${k + 2} took ${exactly(a.time)} and ${exactly(b.time)} where ${about(usualA.mid)} and ${about(usualB.mid)} are usual`;
  const slip = { span: 2, size: shown + Math.min(offA, offB) };
  if (fits(b.time, usualA, SWAPPED) && fits(a.time, usualB, SWAPPED)) {
    const why = `${start}: they were probably swapped, or the touch between them was taken ${how}.`;
    return { ...slip, kind: 'swapped', why, mend: timed(pair, b.time) };
  }
  const within = isLast ? FITS_LAST : FITS;
  const sum = a.time + b.time;
  const first = Math.round((sum * usualA.mid) / (usualA.mid + usualB.mid));
  if (!fits(first, usualA, within) || !fits(sum - first, usualB, within)) return null;
  // A medley changes its stroke after each quarter, which looks the same.
  const medley = (4 * (k + 1)) % laps.length === 0 ? ', unless the stroke changes there' : '';
  const why = `${start}: the touch between them was probably taken ${seconds(Math.abs(a.time - first))} ${how}${medley}.`;
  return { ...slip, kind: `${how}-touch`, why, mend: timed(pair, first) };
}

/** Both laps with the touch between them at another time after the first one's start. */
function timed({ a, b }: Pair, first: number): readonly Lap[] {
  return [
    { ...a, time: first },
    { ...b, time: a.time + b.time - first },
  ];
}

/** How far each of two laps is outside its neighbours, towards the other, as a share of a lap. */
function offTowards(how: 'late' | 'early', { k, laps, a, b, usualA, usualB }: Pair) {
  const late = how === 'late';
  // Of four laps only the outer two are left to judge the middle ones by, and those drift apart.
  const between = laps.length === 4 && k === 1 && usualA.drift === (late ? 1 : -1);
  const edgeA = between ? usualA.mid : late ? usualA.high : usualA.low;
  const edgeB = between ? usualB.mid : late ? usualB.low : usualB.high;
  const offs = [(a.time - edgeA) / usualA.mid, (edgeB - b.time) / usualB.mid] as const;
  return late ? offs : ([-offs[0], -offs[1]] as const);
}

/** How far off both must be on average: the more, the less even the laps around them are. */
function leastShown({ k, laps, usualA, usualB }: Pair): number {
  const { count, unevenness } = around(laps, k, k + 1);
  if (count === 1) return ALONE;
  const share = APART + 3 * Math.max(0, unevenness - (UNEVEN[count === 2 ? 0 : 1] as number));
  return Math.max(share, LEAST / Math.min(usualA.mid, usualB.mid));
}
