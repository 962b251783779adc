/**
 * Why a reading or an estimate should be taken with care, as a stable name.
 *
 * - `few-reps`: too few reps to tell a habit from chance.
 * - `long-rest`: rest so long against the swim that each rep starts fresh.
 * - `rest-unknown`: neither send-off nor rest was given.
 * - `missed-send-off`: a rep was slower than its send-off.
 * - `lane-crowded`: the lane has more swimmers than its send-off has room for.
 * - `wall-clash`: one swimmer leaves as another comes in.
 * - `catches-up`: a swimmer catches the one ahead within a rep.
 * - `cap-forces-spread`: the cap on a lane's swimmers puts different paces together.
 * - `odd-hundredth`: the goal cannot be halved as asked: one half has a hundredth more.
 * - `shape-borrowed`: a plan's shape was taken from other swims than the one planned.
 * - `no-halfway-mark`: reps without a mark in their first half were left out.
 * - `halves-interpolated`: halfway was read off a line between two marks.
 * - `reps-uneven`: rep times vary too much for one pace to describe them.
 * - `fading`: the last reps were clearly slower than the first.
 * - `race-longer-than-set`: the race is longer than all that was swum.
 * - `course-differs`: the set and the race are swum in different pools.
 * - `rule-untested`: no published study has tested the rule behind the figure.
 * - `two-trials`: two swims were fitted, which always fit.
 * - `trial-durations`: the trials are shorter, or closer together, than good practice asks.
 * - `reserve-unlikely`: the reserve of a critical speed is smaller or larger than swimmers have.
 * - `exponent-given`: an exponent was given, not seen in this swimmer.
 * - `contested`: the literature does not agree on the model.
 * - `extrapolated`: the distance lies outside what was swum.
 * - `outside-validity`: the swim is shorter or longer than the model is used for.
 * - `bend-crossed`: short and long swims are mixed, where the line of records bends.
 * - `no-range`: nobody has measured a range, or the trials scatter too much for one.
 * - `narrow-range`: the range is narrower than one swimmer’s races vary anyway.
 * - `biased-record`: over published races the method was off to one side.
 * - `ranges-differ`: ranges laid side by side cover different things.
 * - `converted-time`: a converted time is for entry and comparison, not a performance.
 * - `rounding-assumed`: the published rule does not say how to round; another rule of its kind was followed.
 * - `gain-varies`: what a turn gains differs between swimmers as much as between pools.
 * - `outside-published-range`: the figure lies outside what studies measured.
 * - `open-water-safety`: open water needs company, supervision and the local rules.
 * - `current-assumed`: currents were taken as stated and steady.
 * - `straight-line`: legs were taken as swum straight from buoy to buoy.
 * - `pace-unknown`: a swim has neither a pace nor a target, so its time is not known.
 * - `rest-unstated`: nothing is said of the rest after a single swim, which was taken as none.
 */
export type CautionCode =
  | 'few-reps'
  | 'long-rest'
  | 'rest-unknown'
  | 'missed-send-off'
  | 'lane-crowded'
  | 'wall-clash'
  | 'catches-up'
  | 'cap-forces-spread'
  | 'odd-hundredth'
  | 'shape-borrowed'
  | 'no-halfway-mark'
  | 'halves-interpolated'
  | 'reps-uneven'
  | 'fading'
  | 'race-longer-than-set'
  | 'course-differs'
  | 'rule-untested'
  | 'two-trials'
  | 'trial-durations'
  | 'reserve-unlikely'
  | 'exponent-given'
  | 'contested'
  | 'extrapolated'
  | 'outside-validity'
  | 'bend-crossed'
  | 'no-range'
  | 'narrow-range'
  | 'biased-record'
  | 'ranges-differ'
  | 'converted-time'
  | 'rounding-assumed'
  | 'gain-varies'
  | 'outside-published-range'
  | 'open-water-safety'
  | 'current-assumed'
  | 'straight-line'
  | 'pace-unknown'
  | 'rest-unstated';

/**
 * Something a person should know before trusting a figure. It comes beside the figure and refuses nothing; what
 * cannot be done at all is a {@link PacingError}.
 */
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
