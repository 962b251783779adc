import { type Belief, finishGuess, type Guess, halfwayGuess, learn } from './belief.js';
import { mayBe, type Roster, repStart, type Touch } from './deck-plan.js';

// A beam search over the touches in order: a story says whose mark each touch so far was. Each touch
// makes every story branch (each swimmer whose next marks lie near, or nobody); the likeliest go on.
// The share of the surviving stories that agree on a touch is the confidence in it.

/** The mark a touch was taken for: a swimmer and the number of the mark, counts from 0. */
export interface Claim {
  readonly swimmer: number;
  readonly mark: number;
}

interface Story {
  readonly cost: number; // −log of how likely it is
  readonly rank: number; // cost with the marks that are due
  readonly belief: readonly Belief[];
  readonly next: readonly number[]; // the next mark of each swimmer
  readonly halfway: readonly (number | null)[]; // of the rep under way
  readonly claim: Claim | null; // what the last touch was
  readonly before: Story | null;
}

/** What is known of a touch: the claims made for it, likeliest first; null is "nobody's". */
export type Claims = readonly { readonly claim: Claim | null; readonly share: number }[];

// Choices of ours. Costs are −log of a probability, or of a density per hundredth.
const BEAM = 48;
export const MISSED = -Math.log(0.01);
export const STRAY = -Math.log(0.01 / 6000); // a touch out of nowhere, anywhere in a minute
const DOUBLE = -Math.log(0.01 / 50); // a second tap within half a second
const GATE = 5; // standard deviations
const DENIED = 1e6; // a story that takes a person's word for nothing: only where no other is left

/** What a search found. */
export interface Found {
  /** The claims for each touch with only the touches up to it known. */
  readonly live: readonly Claims[];
  /** The likeliest claim for each touch with all of them known. */
  readonly best: readonly (Claim | null)[];
}

/** Reads the touches in order, from what is believed of each swimmer at the start. */
export function search(
  roster: Roster,
  touches: readonly Touch[],
  scatter: readonly number[],
  belief: readonly Belief[],
): Found {
  const next = roster.swimmers.map(() => 0);
  const halfway = roster.swimmers.map(() => null);
  let stories: readonly Story[] = [
    { cost: 0, rank: 0, belief, next, halfway, claim: null, before: null },
  ];
  const live = touches.map((touch, i) => {
    const previous = touches[i - 1]?.time ?? -Infinity;
    const told = stories.flatMap((story) => branches(story, touch, previous, roster, scatter));
    stories = prune(told, touch.time, roster, scatter);
    return sharesOf(stories);
  });
  return { live, best: pathOf(stories[0] as Story) };
}

/** The cost of a time under a guess. */
export function density(time: number, { mean, variance }: Guess): number {
  return (time - mean) ** 2 / (2 * variance) + Math.log(2 * Math.PI * variance) / 2;
}

function branches(
  story: Story,
  touch: Touch,
  previous: number,
  roster: Roster,
  scatter: readonly number[],
): readonly Story[] {
  const double = touch.time - previous <= 50;
  const told = touch.swimmer !== undefined;
  const nobody = told ? DENIED : double ? Math.min(DOUBLE, STRAY) : STRAY;
  const out: Story[] = [
    {
      ...story,
      cost: story.cost + nobody,
      claim: null,
      before: story,
    },
  ];
  roster.swimmers.forEach(({ lane }, swimmer) => {
    if (touch.lane !== undefined && touch.lane !== lane) return;
    if (told && touch.swimmer !== swimmer) return;
    let ahead = story;
    for (let skipped = 0; skipped <= 2 * roster.marks.length; skipped++) {
      const mark = ahead.next[swimmer] as number;
      if (mark >= roster.reps * roster.marks.length) return;
      const guess = expected(ahead, swimmer, roster, scatter);
      const distance = (touch.time - guess.mean) / Math.sqrt(guess.variance);
      if (distance < -GATE && !told) return; // and the later marks are further off still
      const swum = touch.time - repStart(roster, swimmer, mark);
      const later = swum > (ahead.halfway[swimmer] ?? 0);
      if (later && (distance <= GATE || told) && mayBe(touch, roster, swimmer, mark)) {
        out.push({
          ...advance(ahead, swimmer, touch.time, roster, scatter),
          cost: ahead.cost + density(touch.time, guess),
          claim: { swimmer, mark },
          before: story,
        });
      }
      ahead = { ...advance(ahead, swimmer, null, roster, scatter), cost: ahead.cost + MISSED };
    }
  });
  return out;
}

/** When a swimmer's next mark is due, on the clock of the touches. */
function expected(
  story: Story,
  swimmer: number,
  roster: Roster,
  scatter: readonly number[],
): Guess {
  const belief = story.belief[swimmer] as Belief;
  const mark = story.next[swimmer] as number;
  const spread = scatter[swimmer] as number;
  const kind = roster.marks[mark % roster.marks.length];
  const guess =
    kind === 'halfway'
      ? halfwayGuess(belief, spread)
      : finishGuess(belief, spread, story.halfway[swimmer] ?? null);
  return { mean: repStart(roster, swimmer, mark) + guess.mean, variance: guess.variance };
}

/** The story after a swimmer's next mark was touched at a time, or missed. */
function advance(
  story: Story,
  swimmer: number,
  time: number | null,
  roster: Roster,
  scatter: readonly number[],
): Story {
  const mark = story.next[swimmer] as number;
  const swum = time === null ? null : time - repStart(roster, swimmer, mark);
  const next = story.next.with(swimmer, mark + 1);
  if (roster.marks[mark % roster.marks.length] === 'halfway') {
    return { ...story, next, halfway: story.halfway.with(swimmer, swum) };
  }
  const before = story.belief[swimmer] as Belief;
  const learnt = learn(before, scatter[swimmer] as number, story.halfway[swimmer] ?? null, swum);
  return {
    ...story,
    next,
    belief: story.belief.with(swimmer, learnt),
    halfway: story.halfway.with(swimmer, null),
  };
}

/** The likeliest stories, told apart by where they stand; marks that are due weigh in. */
function prune(
  stories: readonly Story[],
  now: number,
  roster: Roster,
  scatter: readonly number[],
): readonly Story[] {
  return stories
    .map((story) => ({ ...story, rank: story.cost + overdue(story, now, roster, scatter) }))
    .sort((a, b) => a.rank - b.rank)
    .slice(0, BEAM);
}

/** The cost of marks that should have been touched by now and were not. */
function overdue(story: Story, now: number, roster: Roster, scatter: readonly number[]): number {
  let cost = 0;
  roster.swimmers.forEach((_, swimmer) => {
    if ((story.next[swimmer] as number) >= roster.reps * roster.marks.length) return;
    const { mean, variance } = expected(story, swimmer, roster, scatter);
    const z = (now - mean) / Math.sqrt(variance);
    // The chance that it is still to come (a logistic curve close to the normal one), or was missed.
    const toCome = 1 / (1 + Math.exp(Math.min(1.702 * z, 700)));
    cost -= Math.log(0.01 + 0.99 * toCome);
  });
  return cost;
}

/** How the stories share on the latest touch. */
function sharesOf(stories: readonly Story[]): Claims {
  const best = (stories[0] as Story).rank;
  const shares = new Map<string, { claim: Claim | null; share: number }>();
  const weights = stories.map(({ rank }) => Math.exp(best - rank));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  stories.forEach(({ claim }, i) => {
    const key = claim === null ? '' : `${claim.swimmer} ${claim.mark}`;
    const share = (shares.get(key)?.share ?? 0) + (weights[i] as number) / total;
    shares.set(key, { claim, share });
  });
  return [...shares.values()].sort((a, b) => b.share - a.share);
}

function pathOf(story: Story): readonly (Claim | null)[] {
  const path: (Claim | null)[] = [];
  for (let at: Story | null = story; at?.before; at = at.before) path.push(at.claim);
  return path.reverse();
}
