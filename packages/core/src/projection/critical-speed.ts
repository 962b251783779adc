import { type Caution, cautionsWhere } from '../caution.js';
import { type Hundredths, hundredths, nearestHundredth } from '../time/hundredths.js';
import { fitLine, type Interval, intervalOf, type LineFit } from './line-fit.js';
import { type Trial, trialsOf } from './trial.js';
import { twoTrials } from './trial-estimate.js';

/** A critical speed with the reserve on top of it, and how well the trials agree on them. */
export interface CriticalSpeed {
  /** The trials it was fitted to, shortest first, all in metres. */
  readonly trials: readonly Trial[];
  /** The speed that pace settles at, in metres per second. */
  readonly speed: number;
  /** The same as a pace, in hundredths of a second per 100 m. */
  readonly pace: Hundredths;
  /** The distance that can be swum above that speed before it is used up, in metres. */
  readonly reserve: number;
  /** Standard errors in metres per second and metres; null for two trials. */
  readonly standardErrors: { readonly speed: number; readonly reserve: number } | null;
  /** 95 % confidence intervals in metres per second and metres; null for two trials. */
  readonly intervals: { readonly speed: Interval; readonly reserve: Interval } | null;
  /** What each trial's distance lies beyond the line, in metres. */
  readonly residuals: readonly number[];
  /** Share of the variation that the line explains, a ratio; null for two trials. */
  readonly rSquared: number | null;
  /** The durations it may be used for, in hundredths of a second. */
  readonly validity: {
    /** The shortest, in hundredths of a second. */
    readonly from: Hundredths;
    /** The longest, in hundredths of a second. */
    readonly to: Hundredths;
  };
  /** What to know before trusting the figures. */
  readonly cautions: readonly Caution[];
}

// Good practice, as quoted in J. Hum. Kinet. 2024 (stroke-specific critical speed): trials
// from 2 min up, 5 min or more between shortest and longest; for performances of 2 to 30 min.
const MINUTE = 6000;
const VALIDITY = { from: hundredths(2 * MINUTE), to: hundredths(30 * MINUTE) };
const APART = 5 * MINUTE;
// Metres: limits of our own. Trained swimmers had 23 ± 6 (Int. J. Sports Physiol. Perform. 13(9), 2018).
const RESERVE = { least: 5, most: 50 };

/**
 * Fits a critical speed to two or more trials, each swum flat out: the speed that pace settles at, for
 * threshold sets and long races, and the reserve on top of it.
 *
 * A straight line of distance on time, least squares (two give the closed form): the slope is the speed, the
 * distance at time zero the reserve. What it gives for a race is {@link timeFromCriticalSpeed}, for a set
 * {@link reserveThrough}.
 *
 * The model is contested. In the pool it came out 3 to 9 % faster than the speed of a 30 minute
 * swim, it cannot be held for ever, and the reserve repeats poorly: the cautions say so. Trials are
 * maximal efforts: only warmed up, in good health, and with a lifeguard or coach on deck.
 *
 * @param trials - Two or more trials, in any order: distances in metres (or yards, with `unit`), times in hundredths
 *   of a second.
 * @returns Speed in metres per second, reserve in metres, and how well the trials agree.
 * @throws {@link PacingError} `too-few-trials` under two; `trial-repeated` where two have one distance;
 *   `trials-contradict` where a longer one was swum at no slower a pace;
 *   `not-a-time`, `out-of-range`, `unknown-choice` or `wrong-shape` where one is not a trial; `too-large`.
 * @example
 * const trials = [
 *   { distance: 200, time: parseTime('2:20.00') },
 *   { distance: 400, time: parseTime('4:55.00') },
 *   { distance: 800, time: parseTime('10:12.00') },
 * ];
 * const model = fitCriticalSpeed(trials);
 * model.speed.toFixed(3); // => '1.270'
 * model.reserve.toFixed(1); // => '23.5'
 * formatTime(model.pace); // => '1:18.75'
 * @example
 * const trials = [
 *   { distance: 500, unit: 'yd', time: parseTime('5:45.00') },
 *   { distance: 1000, unit: 'yd', time: parseTime('11:55.00') },
 * ] as const;
 * const model = fitCriticalSpeed(trials); // in metres, whatever the trials were in
 * model.speed.toFixed(3); // => '1.236'
 * model.trials[0]; // => { distance: 457.2, time: 34500 }
 * @see Wakayoshi et al. 1992, Eur. J. Appl. Physiol. 64(2), for the model in swimming; Dekerle et al.
 *   2002, Int. J. Sports Med. 23, and Rev. Bras. Med. Esporte 13(3), 2007, against 30 minutes.
 */
export function fitCriticalSpeed(trials: readonly Trial[]): CriticalSpeed {
  const swum = trialsOf(trials);
  const line = lineOf(swum);
  const { slope: speed, intercept: reserve, scatter } = line;
  return {
    trials: swum,
    speed,
    pace: nearestHundredth(10_000 / speed),
    reserve,
    standardErrors: scatter && { speed: scatter.slopeError, reserve: scatter.interceptError },
    intervals: scatter && {
      speed: intervalOf(speed, scatter.slopeError, scatter),
      reserve: intervalOf(reserve, scatter.interceptError, scatter),
    },
    residuals: line.residuals,
    rSquared: scatter?.rSquared ?? null,
    validity: VALIDITY,
    cautions: cautionsOf(swum, reserve),
  };
}

/** Distance in metres on time in seconds. */
export function lineOf(trials: readonly Trial[]): LineFit {
  return fitLine(
    trials.map(({ time }) => time / 100),
    trials.map(({ distance }) => distance),
  );
}

function cautionsOf(trials: readonly Trial[], reserve: number): readonly Caution[] {
  const shortest = (trials[0] as Trial).time;
  const longest = (trials.at(-1) as Trial).time;
  return cautionsWhere(
    twoTrials(trials),
    [
      shortest < VALIDITY.from || longest - shortest < APART,
      'trial-durations',
      'Good practice is a shortest trial of 2 minutes or more and a longest one 5 minutes beyond.',
    ],
    [
      reserve < RESERVE.least || reserve > RESERVE.most,
      'reserve-unlikely',
      'The reserve is outside 5 to 50 m (limits of our own): was every trial flat out?',
    ],
    [
      true,
      'contested',
      'Published critical speeds were 3 to 9 % faster than a 30 minute swim, and reserves repeated to 13 to 45 %.',
    ],
  );
}
