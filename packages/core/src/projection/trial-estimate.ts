import { type Caution, type CautionCode, cautionsWhere } from '../caution.js';
import { nearestHundredth, timeOf } from '../time/hundredths.js';
import type { Estimate } from './estimate.js';
import { rangeBetween } from './estimate-range.js';
import type { Interval } from './line-fit.js';
import { recordedRange, type Seen } from './recorded-range.js';
import type { Trial } from './trial.js';

/** What a model fitted to trials says of one distance. */
interface Prediction {
  readonly method: string;
  /** The trials, shortest first. */
  readonly trials: readonly Trial[];
  readonly metres: number;
  /** The time, in hundredths of a second, not rounded. */
  readonly time: number;
  /** Its 95 % prediction interval, which takes three trials; null where it has no end. */
  readonly predicted: Interval | null;
  /** The track record of these distances, where there is one. */
  readonly seen: Seen | null;
  readonly assumption: string;
  readonly cautions: readonly Caution[];
}

// Pyne et al. 2004, J. Sports Sci. 22(7): an Olympic swimmer's times vary between meets by 0.80 %.
// A range of 90 % for one race is then ±1.3 % at the least, however good the estimate.
const LEAST_SHARE = 1.645 * 0.008;

/** The estimate of a model fitted to trials: a statistical range from three on, the track record's below. */
export function trialEstimate(prediction: Prediction): Estimate {
  const { method, trials, metres, time, predicted, seen, assumption } = prediction;
  const covers = `95 % prediction interval of the line through ${trials.length} swims`;
  const { range, cautions } =
    trials.length < 3
      ? recordedRange(time, seen)
      : { range: predicted && rangeBetween(predicted.low, predicted.high, covers), cautions: [] };
  const outside = trials.every(({ distance }) => distance < metres);
  const inside = trials.every(({ distance }) => distance > metres);
  return {
    time: timeOf(nearestHundredth(time), 'The estimate'),
    range,
    method,
    assumptions: [assumption, 'Every swim was flat out, alike in pool, stroke and start.'],
    cautions: [
      ...prediction.cautions,
      ...cautionsWhere(
        [outside || inside, 'extrapolated', `${metres} m is outside the distances swum.`],
        [
          range === null,
          'no-range',
          'Nobody has measured a range for these distances, or the swims scatter too much for one.',
        ],
        [
          range !== null && range.high - range.low < LEAST_SHARE * (range.high + range.low),
          'narrow-range',
          'The range covers the fit, not the day: one swimmer’s races vary by ±1.3 % or more.',
        ],
      ),
      ...cautions,
    ],
  };
}

/** For a fit: a line through two points shows nothing about itself. */
export function twoTrials(trials: readonly Trial[]): readonly [boolean, CautionCode, string] {
  return [
    trials.length === 2,
    'two-trials',
    'Two swims always fit; a third one shows how well they agree.',
  ];
}
