/**
 * Why a reading or an estimate should be taken with care, as a stable name.
 *
 * - `few-reps`: too few reps to tell a habit from chance.
 * - `long-rest`: rest so long against the swim that each rep starts fresh.
 * - `rest-unknown`: neither send-off nor rest was given.
 * - `missed-send-off`: a rep was slower than its send-off.
 * - `no-halfway-mark`: reps without a mark in their first half were left out.
 * - `halves-interpolated`: halfway was read off a line between two marks.
 * - `reps-uneven`: rep times vary too much for one pace to describe them.
 * - `fading`: the last reps were clearly slower than the first.
 * - `race-longer-than-set`: the race is longer than all that was swum.
 * - `course-differs`: the set and the race are swum in different pools.
 * - `rule-untested`: no published study has tested the rule behind the figure.
 */
export type CautionCode =
  | 'few-reps'
  | 'long-rest'
  | 'rest-unknown'
  | 'missed-send-off'
  | 'no-halfway-mark'
  | 'halves-interpolated'
  | 'reps-uneven'
  | 'fading'
  | 'race-longer-than-set'
  | 'course-differs'
  | 'rule-untested';

/** Something a person should know before trusting a figure. */
export interface Caution {
  /** What it is about, as a stable name. */
  readonly code: CautionCode;
  /** One sentence a coach can read. */
  readonly message: string;
}

/** The cautions whose condition holds, in the order given. */
export function cautionsWhere(
  ...all: readonly (readonly [boolean, CautionCode, string])[]
): readonly Caution[] {
  return all.filter(([holds]) => holds).map(([, code, message]) => ({ code, message }));
}
