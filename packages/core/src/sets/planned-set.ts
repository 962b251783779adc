import type { Stroke } from '../course/event.js';
import type { Hundredths } from '../time/hundredths.js';

/** Where a part stands in the text that was read. */
export interface TextSpan {
  /** The place of its first character, a count from 0. */
  readonly start: number;
  /** The place after its last character, a count from 0. */
  readonly end: number;
}

/** A stroke as a set names it: `medley` is the individual medley, `choice` the swimmer's own. */
export type SetStroke = Stroke | 'choice';

/** Whether the stroke is swum whole, or in part: `kick` legs alone, `pull` arms alone, or a `drill`. */
export type SetKind = 'swim' | 'kick' | 'pull' | 'drill';

/** How hard it is meant. */
export type SetEffort = 'easy' | 'moderate' | 'fast' | 'sprint';

/** How a swim is swum. What is said of rounds holds for each swim in them that says nothing else. */
export interface SwimManner {
  /** The stroke. */
  readonly stroke?: SetStroke;
  /** Swim, kick, pull or drill. */
  readonly kind?: SetKind;
  /** How hard. */
  readonly effort?: SetEffort;
  /** The shape inside each rep: faster within, second half faster, or even. */
  readonly within?: 'build' | 'negative' | 'even';
  /** The stretches the rep is divided into, in the pool's unit: `by 25`. */
  readonly by?: number;
}

/** The shape over the reps: each faster, each slower, or the best mean of all of them. */
export interface RepsShape {
  /** Its name. */
  readonly shape: 'descend' | 'ascend' | 'best average';
  /**
   * Rep numbers or counts of reps: `[1, 4]` from the first to the fourth, then again; `[2, 2, 2, 2]`
   * in groups of two. All reps unless given.
   */
  readonly pattern?: readonly number[];
}

/** What may be said of any part of a set. */
export interface SetDetails extends SwimManner {
  /**
   * Time from one start to the next, in hundredths of a second: one for all lanes, or one a lane. Of
   * rounds: from the start of a round to the next round's.
   */
  readonly sendOffs?: readonly Hundredths[];
  /** Rest after each rep, or after each round on top of its last rep's, in hundredths of a second. */
  readonly rest?: Hundredths;
  /** The shape over the reps. */
  readonly over?: RepsShape;
  /** How the odd reps, or the odd rounds, are swum. */
  readonly odd?: SwimManner;
  /** How the even reps, or the even rounds, are swum. */
  readonly even?: SwimManner;
  /** The comment on its line; only where it stands in a block, not inside brackets. */
  readonly comment?: string;
  /** Where it stands in the text; absent in a set built by hand. */
  readonly source?: TextSpan;
}

/** Reps of one distance (`8 x 50`), or of a ladder of distances (`50-100-150`). */
export interface SetSwims extends SetDetails {
  /** Tells it from rounds. */
  readonly type: 'swims';
  /** How many times the distance, or the whole ladder, is swum: a count. */
  readonly reps: number;
  /** One distance, or those of a ladder in order, in the pool's unit. */
  readonly distances: readonly number[];
  /** The time each rep should take, in hundredths of a second. */
  readonly target?: Hundredths;
}

/** Several parts, swum one after the other, once or more often: `3 x (4 x 100 + 200)`, or a broken swim. */
export interface SetRounds extends SetDetails {
  /** Tells it from swims. */
  readonly type: 'rounds';
  /** How many times: a count. */
  readonly rounds: number;
  /** The parts in order. */
  readonly items: readonly SetItem[];
  /** For a broken swim: its distance in the pool's unit, which the parts add up to. */
  readonly broken?: number;
}

/** A part of a set. */
export type SetItem = SetSwims | SetRounds;

/** A part of a practice: what stands under one heading. */
export interface SetBlock {
  /** Its heading; null for what stands before any heading. */
  readonly name: 'warm-up' | 'pre-set' | 'main set' | 'cool-down' | null;
  /** What is swum, in order. */
  readonly items: readonly SetItem[];
  /** Where it stands in the text; absent in a set built by hand. */
  readonly source?: TextSpan;
}

/**
 * A place where handouts disagree, or where the text says less than it seems to.
 *
 * - `at-is-send-off`: `@` or `at` was read as a send-off.
 * - `time-is-send-off`: a time on its own was read as a send-off.
 * - `on-is-rest`: `on` or `@` before a rest was read as the rest.
 * - `descend-is-faster`: descend was read as each rep faster.
 * - `ns-is-negative-split`: NS was read as a negative split, not as a no-show.
 * - `even-is-pace`: even was read as an even pace, not as the even reps.
 * - `rounds-to-line-end`: rounds without brackets were read up to the end of the line.
 * - `rounds-to-empty-line`: rounds without brackets were read up to the next empty line.
 * - `round-rest-added`: rest after a round comes on top of its last rep's.
 * - `unit-left-out`: a unit was left out; distances are in the pool's own.
 * - `breath-holding`: a comment speaks of breath-holding.
 */
export type SetNoteCode =
  | 'at-is-send-off'
  | 'time-is-send-off'
  | 'on-is-rest'
  | 'descend-is-faster'
  | 'ns-is-negative-split'
  | 'even-is-pace'
  | 'rounds-to-line-end'
  | 'rounds-to-empty-line'
  | 'round-rest-added'
  | 'unit-left-out'
  | 'breath-holding';

/** Which reading was taken, said once, where it was first needed. */
export interface SetNote {
  /** What it is about, as a stable name. */
  readonly code: SetNoteCode;
  /** One sentence a coach can read. */
  readonly message: string;
  /** The place in the text, a count of characters from 0. */
  readonly position: number;
}

/** A set or a whole practice as planned: what {@link parseSet} reads and {@link formatSet} writes. */
export interface PlannedSet {
  /** Its blocks in order; one without a name where there is no heading. */
  readonly blocks: readonly SetBlock[];
  /** The readings that were taken where handouts disagree. */
  readonly notes: readonly SetNote[];
}
