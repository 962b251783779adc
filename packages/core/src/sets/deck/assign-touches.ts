import { choiceOf, fieldsOf } from '../../check.js';
import { PacingError } from '../../errors.js';
import { show } from '../../show.js';
import type { Splits } from '../../splits/splits.js';
import type { Hundredths } from '../../time/hundredths.js';
import { firstBelief, SCATTER } from './belief.js';
import {
  type DeckMark,
  type DeckPlan,
  type Roster,
  rosterOf,
  type Touch,
  touchesOf,
} from './deck-plan.js';
import { doubts } from './doubt.js';
import { type Claim, type Claims, search } from './search.js';
import { lessons, missingOf, placeOf, swimsOf } from './swum-reps.js';

/** Whose mark a touch may have been. */
export interface TouchReading {
  /** The swimmer's place in the plan, a count from 0; null where the touch is nobody's. */
  readonly swimmer: number | null;
  /** The swimmer's name; null where the touch is nobody's. */
  readonly name: string | null;
  /** The rep, a count from 1; null where the touch is nobody's. */
  readonly rep: number | null;
  /** Which mark of the rep; null where the touch is nobody's. */
  readonly mark: DeckMark | null;
  /** How sure this is: a ratio from 0 to 1. */
  readonly confidence: number;
}

/** A touch with the reading it was given. */
export interface AssignedTouch extends TouchReading {
  /** The touch, in hundredths of a second. */
  readonly time: Hundredths;
  /** Whether a person should look: another reading is not far behind. */
  readonly doubtful: boolean;
  /** Other readings of a doubtful touch, likeliest first. */
  readonly alternatives: readonly TouchReading[];
}

/** A mark that nobody touched. */
export interface MissingTouch {
  /** The swimmer's place in the plan, a count from 0. */
  readonly swimmer: number;
  /** The swimmer's name. */
  readonly name: string;
  /** The rep, a count from 1. */
  readonly rep: number;
  /** Which mark of the rep. */
  readonly mark: DeckMark;
}

/** A set timed with one thumb, sorted out. */
export interface DeckReading {
  /** Each touch, in order of time. */
  readonly touches: readonly AssignedTouch[];
  /** Marks before the last touch that have none. */
  readonly missing: readonly MissingTouch[];
  /** For each swimmer of the plan, the reps; null where the finish is missing. Fit for `readSet`. */
  readonly swims: readonly {
    /** The swimmer's name. */
    readonly name: string;
    /** Distances in the pool's unit, times since the swimmer's own start in hundredths of a second. */
    readonly reps: readonly (Splits | null)[];
  }[];
}

/** Below this share of the stories that agree, a touch is shown as doubtful. A choice, tried out. */
const SURE = 0.91;

/** Which touches {@link assignTouches} judges each by. */
export interface AssignTouchesOptions {
  /**
   * `all` uses the whole set for every touch; `past` only the touches up to it, as a live display must. `all`
   * unless given.
   */
  readonly known?: 'all' | 'past';
}

/**
 * Tells whose mark each touch of a thumb was, in a set where swimmers leave one after another.
 *
 * Start times are known from send-off and stagger; each swimmer's rep time is expected at first and then
 * learnt from what the set has shown; a swimmer's marks come in order. Of all the ways to share out
 * the touches the likeliest is taken, and the confidence in each touch is the share of likely ways
 * that agree on it. Missed marks and touches that are nobody's (a double tap) are found too. What a
 * touch says of itself is believed: its lane, its kind of mark, or whose it was and in which rep. A person
 * looks at the doubtful ones; then each swimmer's reps go to {@link readSet}.
 *
 * @param plan - Who leaves when: times in hundredths of a second, the distance in the pool's unit.
 * @param touches - Times since the first start in hundredths of a second, or {@link Touch} objects.
 * @param options - Which touches each is judged by.
 * @returns The touches with their swimmers, what is missing, and each swimmer's reps; times in
 *   hundredths of a second, confidences as ratios from 0 to 1.
 * @throws {@link PacingError} `cannot-tell-apart` where two swimmers leave together and no touch says
 *   its lane; `out-of-range`, `not-a-time`, `wrong-shape`, `unknown-choice` where the plan or a touch is
 *   not what it should be.
 * @example
 * const plan = {
 *   swimmers: [
 *     { name: 'Mara Quill', repTime: parseTime('1:05') },
 *     { name: 'Ivo Tarn', repTime: parseTime('1:10') },
 *   ],
 *   reps: 1, repDistance: 100, sendOff: parseTime('1:40'), stagger: parseTime(':05'),
 *   marks: 'finish',
 * } as const;
 * const { touches, swims } = assignTouches(plan, ['1:05.40', '1:14.90'].map(parseTime));
 * touches.map(({ name, doubtful }) => [name, doubtful]); // => [['Mara Quill', false], ['Ivo Tarn', false]]
 * swims[1].reps[0]; // => { marks: [{ distance: 100, time: 6990 }] }
 */
export function assignTouches(
  plan: DeckPlan,
  touches: readonly (Hundredths | Touch)[],
  options: AssignTouchesOptions = {},
): DeckReading {
  const roster = rosterOf(plan);
  const { known = 'all' } = fieldsOf(options, 'The options');
  const live = choiceOf(known, ['all', 'past'], 'What is known') === 'past';
  const inOrder = [...touchesOf(touches)].sort((a, b) => a.time - b.time);
  refuseTwins(roster, inOrder);

  const found = byLane(roster, inOrder).map((lane) => readLane(roster, lane, live));
  const readings = found.flat().sort((a, b) => a.place - b.place);
  const claims = readings.map(({ claim }) => claim);
  return {
    touches: readings.map(({ claim, claims: others }, i) =>
      assigned(inOrder[i] as Touch, claim, others, roster),
    ),
    missing: missingOf(roster, inOrder, claims),
    swims: swimsOf(roster, inOrder, claims),
  };
}

interface Placed {
  readonly place: number; // of the touch among all, in order of time
  readonly claim: Claim | null;
  readonly claims: Claims;
}

/** Touches that all say their lane fall apart into lanes that have nothing to do with each other. */
function byLane(
  roster: Roster,
  touches: readonly Touch[],
): readonly (readonly [Touch, number][])[] {
  const placed = touches.map((touch, place): [Touch, number] => [touch, place]);
  if (touches.some(({ lane }) => lane === undefined)) return [placed];
  const lanes = new Set(roster.swimmers.map(({ lane }) => lane));
  const known = [...lanes].map((lane) => placed.filter(([touch]) => touch.lane === lane));
  return [...known, placed.filter(([touch]) => !lanes.has(touch.lane as number))];
}

function readLane(roster: Roster, lane: readonly [Touch, number][], live: boolean): Placed[] {
  const touches = lane.map(([touch]) => touch);
  const scatter = roster.swimmers.map(() => SCATTER);
  const start = roster.swimmers.map(({ repTime }) => firstBelief(repTime));
  const first = search(roster, touches, scatter, start);
  const place = (i: number): number => lane[i]?.[1] ?? 0;
  if (live) {
    return first.live.map((claims, i) => ({
      place: place(i),
      claim: claims[0]?.claim ?? null,
      claims,
    }));
  }
  // Once more, with what the whole set has shown of each swimmer.
  const { beliefs, scatters } = lessons(roster, touches, first.best);
  const { best } = search(roster, touches, scatters, beliefs);
  const claims = doubts(roster, touches, best, beliefs, scatters);
  return best.map((claim, i) => ({ place: place(i), claim, claims: claims[i] ?? [] }));
}

/** Swimmers who start at one time can be told apart only by a lane that the touches say. */
function refuseTwins({ swimmers }: Roster, touches: readonly Touch[]): void {
  const silent = touches.some(({ lane }) => lane === undefined);
  const seen = new Map<string, string>();
  for (const { name, lane, start } of swimmers) {
    const key = silent ? `${start}` : `${lane} ${start}`;
    const twin = seen.get(key);
    seen.set(key, name);
    if (twin === undefined) continue;
    const would = silent ? 'let each touch say its lane' : 'give them a stagger';
    const message = `${show(twin)} and ${show(name)} leave together, so no time can tell them apart; ${would}.`;
    throw new PacingError('cannot-tell-apart', message, swimmers);
  }
}

function assigned(
  { time }: Touch,
  claim: Claim | null,
  claims: Claims,
  roster: Roster,
): AssignedTouch {
  const same = (other: Claim | null) =>
    other?.swimmer === claim?.swimmer && other?.mark === claim?.mark;
  const confidence = claims.find((entry) => same(entry.claim))?.share ?? 0;
  const doubtful = confidence < SURE;
  const others = claims.filter((entry) => !same(entry.claim) && entry.share >= 0.01);
  return {
    time,
    ...readingOf(claim, confidence, roster),
    doubtful,
    alternatives: doubtful ? others.map((o) => readingOf(o.claim, o.share, roster)) : [],
  };
}

function readingOf(claim: Claim | null, confidence: number, roster: Roster): TouchReading {
  if (claim === null) return { swimmer: null, name: null, rep: null, mark: null, confidence };
  const { rep, mark } = placeOf(claim.mark, roster);
  const name = roster.swimmers[claim.swimmer]?.name ?? '';
  return { swimmer: claim.swimmer, name, rep, mark, confidence };
}
