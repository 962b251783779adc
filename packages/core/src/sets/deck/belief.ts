// What is believed of one swimmer while a set goes on: the rep time and where in it halfway falls, each
// as a mean and a variance, made surer by every rep (a Kalman filter of one number each).

/** A number not quite known: times in hundredths of a second, or a ratio. */
export interface Guess {
  readonly mean: number;
  readonly variance: number;
}

export interface Belief {
  /** The swimmer's own mean rep time, in hundredths. */
  readonly pace: Guess;
  /** Halfway as a ratio of the rep. */
  readonly half: Guess;
}

// Choices of ours, from how sets look: each is a standard deviation.
const ENTERED = 0.025; // of the entered pace, against the swimmer's own mean of the day
const WANDER = 0.003; // of the pace, from rep to rep: tiring, or warming up
const HALF = 0.485; // halfway of an even rep from a push-off
const HALF_OWN = 0.006; // between swimmers
const HALF_NOISE = 0.005; // within one

/** Scatter of one swimmer's reps about their own mean, as a share of the rep, where it is not known. */
export const SCATTER = 0.014;

export function firstBelief(repTime: number): Belief {
  return {
    pace: { mean: repTime, variance: (ENTERED * repTime) ** 2 },
    half: { mean: HALF, variance: HALF_OWN ** 2 },
  };
}

const square = (n: number): number => n * n;

/** When halfway is expected, since the start of the rep. */
export function halfwayGuess({ pace, half }: Belief, scatter: number): Guess {
  const spread = pace.variance + square(scatter * pace.mean);
  const ratio = half.variance + square(HALF_NOISE);
  return {
    mean: half.mean * pace.mean,
    variance: square(half.mean) * spread + square(pace.mean) * ratio,
  };
}

/** When the finish is expected, since the start of the rep; a halfway time already seen sharpens it. */
export function finishGuess(
  { pace, half }: Belief,
  scatter: number,
  halfway: number | null,
): Guess {
  const prior = { mean: pace.mean, variance: pace.variance + square(scatter * pace.mean) };
  return halfway === null ? prior : merge(prior, fromHalfway(halfway, half));
}

/** The rep time that a halfway time alone speaks for. */
function fromHalfway(halfway: number, half: Guess): Guess {
  const mean = halfway / half.mean;
  const ratio = (half.variance + square(HALF_NOISE)) / square(half.mean);
  return { mean, variance: square(mean) * ratio };
}

/** Two independent guesses of one number. */
function merge(a: Guess, b: Guess): Guess {
  const weight = a.variance / (a.variance + b.variance);
  return { mean: a.mean + weight * (b.mean - a.mean), variance: a.variance * (1 - weight) };
}

/** What a swum rep teaches; either time may be missing. */
export function learn(
  belief: Belief,
  scatter: number,
  halfway: number | null,
  finish: number | null,
): Belief {
  const seen = finish ?? (halfway === null ? null : fromHalfway(halfway, belief.half).mean);
  if (seen === null) return belief;
  const noise = square(scatter * belief.pace.mean) * (finish === null ? 2 : 1);
  const pace = merge(belief.pace, { mean: seen, variance: noise });
  const wandering = { mean: pace.mean, variance: pace.variance + square(WANDER * pace.mean) };
  if (halfway === null || finish === null) return { pace: wandering, half: belief.half };
  const ratio = { mean: halfway / finish, variance: square(HALF_NOISE) };
  return { pace: wandering, half: merge(belief.half, ratio) };
}
