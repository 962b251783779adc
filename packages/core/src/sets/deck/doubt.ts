import { type Belief, finishGuess, type Guess, halfwayGuess } from './belief.js';
import { mayBe, type Roster, repStart, type Touch } from './deck-plan.js';
import { type Claim, type Claims, density, MISSED, STRAY } from './search.js';

// Once a set is sorted out, each touch is asked again: what if it and a neighbour changed places, or it
// were a mark that nobody touched, or nobody's? How much less likely the set then is, is the doubt.

const NEAR = 1000; // hundredths: no mark is ten seconds off without being a different rep's
const SAME_TAP = 50; // which tap of a double one is kept does not matter

type Change = readonly (readonly [touch: number, claim: Claim | null])[];

/** For each touch the claim it has and those it might have, with their shares, likeliest first. */
export function doubts(
  roster: Roster,
  touches: readonly Touch[],
  claims: readonly (Claim | null)[],
  beliefs: readonly Belief[],
  scatters: readonly number[],
): readonly Claims[] {
  const times = new Map<number, number>(); // mark → time, where it was touched
  const slot = (claim: Claim): number => claim.swimmer * roster.reps * 2 + claim.mark;
  claims.forEach((claim, i) => {
    if (claim !== null) times.set(slot(claim), (touches[i] as Touch).time);
  });
  const open = openMarks();

  return claims.map((claim, i) => {
    const others = changes(i)
      .filter((change) => change.every(([touch, to]) => fits(touches[touch] as Touch, to)))
      .map((change) => ({ claim: change[0]?.[1] ?? null, weight: Math.exp(costOf(change)) }));
    const total = others.reduce((sum, { weight }) => sum + weight, 1);
    const all = [{ claim, weight: 1 }, ...others].map((o) => ({
      claim: o.claim,
      share: o.weight / total,
    }));
    return all.sort((a, b) => b.share - a.share);
  });

  /** The ways in which a touch could be another's; the first of each change is the touch itself. */
  function changes(i: number): readonly Change[] {
    const { time } = touches[i] as Touch;
    const claim = claims[i] ?? null;
    const out: Change[] = [];
    for (const step of [-1, 1]) {
      for (let j = i + step; j >= 0 && j < touches.length; j += step) {
        const gap = Math.abs((touches[j] as Touch).time - time);
        if (gap > NEAR) break;
        const other = claims[j] ?? null;
        if (other === null && claim === null) continue;
        if ((other === null || claim === null) && gap <= SAME_TAP) continue;
        out.push([
          [i, other],
          [j, claim],
        ]);
      }
    }
    for (const { mark, due } of open) {
      if (Math.abs(due - time) <= NEAR) out.push([[i, mark]]);
    }
    if (claim !== null) out.push([[i, null]]);
    return out;
  }

  /** Marks that nobody touched, and when they were due. */
  function openMarks(): readonly { mark: Claim; due: number }[] {
    return roster.swimmers.flatMap((_, swimmer) =>
      Array.from({ length: roster.reps * roster.marks.length }, (_, mark) => ({ swimmer, mark }))
        .filter((claim) => !times.has(slot(claim)))
        .map((mark) => ({
          mark,
          due: repStart(roster, swimmer, mark.mark) + guessOf(mark, null).mean,
        })),
    );
  }

  function guessOf({ swimmer, mark }: Claim, halfway: number | null): Guess {
    const belief = beliefs[swimmer] as Belief;
    const scatter = scatters[swimmer] as number;
    return roster.marks[mark % roster.marks.length] === 'halfway'
      ? halfwayGuess(belief, scatter)
      : finishGuess(belief, scatter, halfway);
  }

  /** How much likelier (below zero: less likely) the set is after a change, as a log. */
  function costOf(change: Change): number {
    const before = new Map<number, number | undefined>();
    const touched = new Set<string>();
    for (const [i, to] of change) {
      for (const claim of [claims[i] ?? null, to]) {
        if (claim === null) continue;
        before.set(slot(claim), times.get(slot(claim)));
        touched.add(`${claim.swimmer} ${Math.floor(claim.mark / roster.marks.length)}`);
      }
    }
    const now = total();
    for (const key of before.keys()) times.delete(key);
    for (const [i, to] of change) if (to !== null) times.set(slot(to), (touches[i] as Touch).time);
    const then = total();
    for (const [key, time] of before) time === undefined ? times.delete(key) : times.set(key, time);
    const strays = change.filter(([, to]) => to === null).length;
    const were = change.filter(([i]) => (claims[i] ?? null) === null).length;
    return now - then - STRAY * (strays - were);

    function total(): number {
      return [...touched].reduce((sum, key) => {
        const [swimmer = 0, rep = 0] = key.split(' ').map(Number);
        return sum + repCost(swimmer, rep);
      }, 0);
    }
  }

  function repCost(swimmer: number, rep: number): number {
    let cost = 0;
    let halfway: number | null = null;
    roster.marks.forEach((kind, k) => {
      const claim = { swimmer, mark: rep * roster.marks.length + k };
      const time = times.get(slot(claim));
      if (time === undefined) {
        cost += MISSED;
        return;
      }
      const swum = time - repStart(roster, swimmer, claim.mark);
      cost += density(swum, guessOf(claim, halfway));
      if (kind === 'halfway') halfway = swum;
    });
    return cost;
  }

  function fits(touch: Touch, claim: Claim | null): boolean {
    if (claim === null) return touch.swimmer === undefined;
    return mayBe(touch, roster, claim.swimmer, claim.mark);
  }
}
