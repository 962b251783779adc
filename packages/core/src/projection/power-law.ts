import { type Caution, cautionsWhere } from '../caution.js';
import { numberOf } from '../check.js';
import { PacingError } from '../errors.js';
import { fitLine, type Interval, intervalOf, type LineFit } from './line-fit.js';
import { type Trial, trialOf, trialsOf } from './trial.js';
import { twoTrials } from './trial-estimate.js';

/** A power law, time = factor · distance^exponent, and how well the races agree on it. */
export interface PowerLaw {
  /** The races it rests on, shortest first and all in metres; a single one where the exponent was given. */
  readonly results: readonly Trial[];
  /** The exponent, a plain ratio: 1 is one pace at any distance, more is fading. */
  readonly exponent: number;
  /** Seconds for the first metre: the factor of the law. */
  readonly factor: number;
  /** The distance at its centre, in metres, where it is surest. */
  readonly referenceDistance: number;
  /** Standard error of the exponent, a ratio; null for fewer than three races. */
  readonly standardError: number | null;
  /** 95 % confidence interval of the exponent, a ratio; null for fewer than three races. */
  readonly interval: Interval | null;
  /** Each time against the law, as a ratio less one: above zero is slower. */
  readonly residuals: readonly number[];
  /** Share of the variation (of logarithms) that it explains, a ratio; null for fewer than three races. */
  readonly rSquared: number | null;
  /** What to know before trusting the figures. */
  readonly cautions: readonly Caution[];
}

/** No swimmer's exponent is above it; a fit that says so rests on a slip. A limit of our own. */
const MOST = 2;

/**
 * Fits a power law to one swimmer's races: how much slower the pace gets with every doubling of the distance.
 *
 * A straight line of the logarithm of time on that of distance, least squares. What it gives for another
 * distance is {@link timeFromPowerLaw}; with one race only, see {@link powerLawThrough}.
 *
 * One exponent for all distances is contested: records bend near 150 to 170 s, so races of 50 to 200
 * and of 400 to 1500 do not belong on one line; a caution says so.
 *
 * @param results - Two or more races, in any order: distances in metres (or yards, with `unit`), times in hundredths
 *   of a second.
 * @returns The exponent (a ratio) with its standard error and 95 % interval, and the factor in seconds.
 * @throws {@link PacingError} `too-few-trials` under two; `trial-repeated` where two have one distance;
 *   `trials-contradict` where a longer one was swum at no slower a pace, or the exponent comes out above 2;
 *   `not-a-time`, `out-of-range`, `unknown-choice` or `wrong-shape` where one is not a race.
 * @example
 * const races = [
 *   { distance: 400, time: parseTime('4:00.00') },
 *   { distance: 800, time: parseTime('8:14.00') },
 *   { distance: 1500, time: parseTime('15:48.00') },
 * ];
 * const { exponent } = fitPowerLaw(races);
 * exponent.toFixed(3); // => '1.039'
 * (2 ** exponent).toFixed(2); // => '2.06'
 * @see Riegel 1981, Am. Sci., for the law; Savaglio and Carbone 2000 for the bend.
 */
export function fitPowerLaw(results: readonly Trial[]): PowerLaw {
  const swum = trialsOf(results);
  const line = logLineOf(swum);
  const { slope: exponent, scatter } = line;
  if (exponent > MOST) {
    const message = `The times give an exponent of ${exponent.toFixed(1)}, and a swimmer's is between 1 and 2; check them for a slip.`;
    throw new PacingError('trials-contradict', message, results);
  }
  return {
    results: swum,
    exponent,
    factor: Math.exp(line.intercept),
    referenceDistance: Math.exp(line.x),
    standardError: scatter?.slopeError ?? null,
    interval: scatter && intervalOf(exponent, scatter.slopeError, scatter),
    residuals: line.residuals.map(Math.expm1),
    rSquared: scatter?.rSquared ?? null,
    cautions: cautionsOf(swum),
  };
}

/**
 * A power law through one race, with an exponent of your choice. There is no default: published
 * exponents differ, and none was found for swimmers by sex and level. {@link REFERENCE_EXPONENTS} lists some.
 * It is contested that one exponent holds for all distances; with two races or more, see {@link fitPowerLaw}.
 *
 * @param race - The race: its distance in metres (or yards, with `unit`), its time in hundredths of a second.
 * @param exponent - The exponent, a ratio from 1 to 2.
 * @returns The law through that race; its factor is in seconds.
 * @throws {@link PacingError} `out-of-range` for an exponent outside 1 to 2; `not-a-time`,
 *   `out-of-range`, `unknown-choice` or `wrong-shape` where it is not a race.
 * @example
 * const law = powerLawThrough({ distance: 400, time: parseTime('4:00.00') }, 1.04);
 * formatTime(timeFromPowerLaw(law, 1500).time); // => '15:48.86'
 * @see Riegel 1981, Am. Sci.
 */
export function powerLawThrough(race: Trial, exponent: number): PowerLaw {
  const { distance, time } = trialOf(race, 'The race');
  const given = numberOf(exponent, 'The exponent', { min: 1, max: MOST });
  return {
    results: [{ distance, time }],
    exponent: given,
    factor: time / 100 / distance ** given,
    referenceDistance: distance,
    standardError: null,
    interval: null,
    residuals: [0],
    rSquared: null,
    cautions: cautionsOf([{ distance, time }]),
  };
}

/** The logarithm of time in seconds on that of distance in metres. */
export function logLineOf(results: readonly Trial[]): LineFit {
  return fitLine(
    results.map(({ distance }) => Math.log(distance)),
    results.map(({ time }) => Math.log(time / 100)),
  );
}

function cautionsOf(results: readonly Trial[]): readonly Caution[] {
  return cautionsWhere(
    [results.length === 1, 'exponent-given', 'The exponent was given, not seen in this swimmer.'],
    twoTrials(results),
    [true, 'contested', 'One exponent for all distances is contested.'],
  );
}
