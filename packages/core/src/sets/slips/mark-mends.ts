import { samePlace, snap } from '../../course/pool.js';
import { exactly } from '../../splits/slips/finding.js';
import { type Lap, replaced } from '../../splits/slips/lap-list.js';
import type { RepSlip } from './rep-mends.js';
import { sharedOut, type UsualRep } from './usual-rep.js';

/** A rep that has its finish but lacks a usual mark before it, with this put where it usually is. */
export function unmarked(laps: readonly Lap[], usual: UsualRep): RepSlip | null {
  const places = placesOf(usual.laps);
  const ends = placesOf(laps).map((there) => places.findIndex((place) => samePlace(place, there)));
  if (ends.includes(-1) || ends.at(-1) !== places.length - 1) return null;
  const starts = [0, ...ends.map((end) => end + 1)];
  const lap = starts.find((start, i) => start < (ends[i] ?? start));
  if (lap === undefined) return null;
  const mend = laps.flatMap(({ time }, i) =>
    sharedOut(time, usual.laps.slice(starts[i], starts[i + 1])),
  );
  const why = `there is no mark at ${snap(places[lap] ?? 0)}, where other reps have one: the touch was probably missed, and the mend puts it where theirs are.`;
  return { kind: 'missed-touch', lap, why, mend };
}

/** How a rep with one lap too few or too many may have come to it, undone. */
export function lapMends(laps: readonly Lap[], usual: UsualRep): readonly RepSlip[] {
  const { length } = usual.laps;
  const mend = (parts: readonly Lap[]): readonly Lap[] =>
    parts.map(({ time }, k) => ({ ...(usual.laps[k] as Lap), time }));
  if (laps.length === length - 1) {
    return laps.map(({ time }, k) => ({
      kind: 'missed-touch',
      lap: k,
      why: `one lap is missing and lap ${k + 1} took ${exactly(time)}: a touch was probably missed, and two laps stand in one.`,
      mend: mend(replaced(laps, k, 1, sharedOut(time, usual.laps.slice(k, k + 2)))),
    }));
  }
  if (laps.length !== length + 1) return [];
  const behind: RepSlip = {
    kind: 'extra-touch',
    lap: length,
    why: 'there is one lap too many, and the others are as usual: a touch after the finish was probably taken.',
    mend: mend(laps.slice(0, length)),
  };
  const cut = laps.slice(1).map(({ time }, k): RepSlip => {
    const whole = { ...(laps[k] as Lap), time: (laps[k] as Lap).time + time };
    const why = `there is one lap too many, and laps ${k + 1} and ${k + 2} together took ${exactly(whole.time)}: a touch was probably taken where there is no wall.`;
    return { kind: 'extra-touch', lap: k, why, mend: mend(replaced(laps, k, 2, [whole])) };
  });
  return [behind, ...cut];
}

/** A rep that ends somewhere else than the others, if it does. */
export function endElsewhere(laps: readonly Lap[], usual: UsualRep): RepSlip | null {
  const [end = 0, wanted = 0] = [placesOf(laps).at(-1), placesOf(usual.laps).at(-1)];
  if (samePlace(end, wanted)) return null;
  const why = `the last mark is at ${snap(end)}, where the others end at ${snap(wanted)}: a touch was probably ${end < wanted ? 'missed' : 'taken that is not of this rep'}.`;
  const kind = end < wanted ? 'missed-touch' : 'extra-touch';
  return { kind, lap: laps.length - 1, why, mend: null };
}

function placesOf(laps: readonly Lap[]): readonly number[] {
  let place = 0;
  return laps.map(({ distance }) => (place += distance));
}
