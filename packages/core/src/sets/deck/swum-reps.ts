import { type Mark, type Splits, splitsFromMarks } from '../../splits/splits.js';
import { deviationOf, meanOf } from '../../statistics.js';
import { hundredths } from '../../time/hundredths.js';
import { type Belief, firstBelief, learn, SCATTER } from './belief.js';
import { type DeckMark, type Roster, repStart, type Touch } from './deck-plan.js';
import type { Claim } from './search.js';

// What follows from knowing whose mark each touch was.

interface SwumRep {
  halfway: number | null;
  finish: number | null;
}

/** The times of each swimmer's reps since their own start, by the claims made. */
function swumReps(
  roster: Roster,
  touches: readonly Touch[],
  claims: readonly (Claim | null)[],
): readonly (readonly SwumRep[])[] {
  const reps = roster.swimmers.map(() =>
    Array.from({ length: roster.reps }, (): SwumRep => ({ halfway: null, finish: null })),
  );
  claims.forEach((claim, i) => {
    if (claim === null) return;
    const { rep, mark } = placeOf(claim.mark, roster);
    const time = (touches[i] as Touch).time - repStart(roster, claim.swimmer, claim.mark);
    (reps[claim.swimmer]?.[rep - 1] as SwumRep)[mark] = time;
  });
  return reps;
}

export const placeOf = (mark: number, { marks }: Roster): { rep: number; mark: DeckMark } => ({
  rep: Math.floor(mark / marks.length) + 1,
  mark: marks[mark % marks.length] as DeckMark,
});

/** Each swimmer's rep time and scatter by the reps a first reading found. */
export function lessons(
  roster: Roster,
  touches: readonly Touch[],
  best: readonly (Claim | null)[],
) {
  const reps = swumReps(roster, touches, best);
  const scatters = reps.map((swum) => {
    const times = swum.flatMap(({ finish }) => (finish === null ? [] : [finish]));
    const share = times.length < 2 ? 0 : deviationOf(times) / meanOf(times);
    const sure = Math.max(times.length - 1, 0);
    // Eight reps' worth of the usual scatter keep a short set from looking too sure.
    return Math.sqrt((8 * SCATTER ** 2 + sure * share ** 2) / (8 + sure));
  });
  const beliefs = reps.map((swum, i): Belief => {
    const start = firstBelief((roster.swimmers[i] as Roster['swimmers'][number]).repTime);
    return swum.reduce(
      (belief, { halfway, finish }) => learn(belief, scatters[i] as number, halfway, finish),
      start,
    );
  });
  return { beliefs, scatters };
}

/** Marks with none of the touches, up to the last mark each swimmer was seen at. */
export function missingOf(
  roster: Roster,
  touches: readonly Touch[],
  claims: readonly (Claim | null)[],
): readonly { swimmer: number; name: string; rep: number; mark: DeckMark }[] {
  const last = touches.at(-1)?.time ?? 0;
  const claimed = new Set(claims.map((claim) => claim && `${claim.swimmer} ${claim.mark}`));
  return roster.swimmers.flatMap(({ name, repTime }, swimmer) =>
    Array.from({ length: roster.reps * roster.marks.length }, (_, mark) => mark)
      .filter((mark) => !claimed.has(`${swimmer} ${mark}`))
      .filter((mark) => repStart(roster, swimmer, mark) + repTime < last)
      .map((mark) => ({ swimmer, name, ...placeOf(mark, roster) })),
  );
}

export function swimsOf(
  roster: Roster,
  touches: readonly Touch[],
  claims: readonly (Claim | null)[],
): readonly { readonly name: string; readonly reps: readonly (Splits | null)[] }[] {
  const reps = swumReps(roster, touches, claims);
  return roster.swimmers.map(({ name }, i) => ({
    name,
    reps: (reps[i] ?? []).map(({ halfway, finish }) => {
      if (finish === null) return null;
      const marks: Mark[] = [];
      if (halfway !== null) {
        marks.push({ distance: roster.repDistance / 2, time: hundredths(halfway) });
      }
      marks.push({ distance: roster.repDistance, time: hundredths(finish) });
      return splitsFromMarks(marks);
    }),
  }));
}
