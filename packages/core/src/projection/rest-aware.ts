import { type Caution, cautionsWhere } from '../caution.js';
import { convertDistance } from '../course/convert-distance.js';
import { attempt } from '../errors.js';
import { restAfter, type SwumSet } from '../sets/swum-set.js';
import { finishOf } from '../splits/splits.js';
import { meanOf } from '../statistics.js';
import { nearestHundredth } from '../time/hundredths.js';
import { type Estimate, raceToRaceRange } from './estimate.js';
import { restGain } from './rest-gain.js';

// Beidaris and Platanou 2025, Sci. J. Sport Perform.: twelve boys of 15; a 200 flat out took 149.33 s on
// average, 4 × 50 flat out on 20 s rest 137.12 s. With 5 and 10 s rest they found no difference.
const FOUR_FIFTIES = { distance: 50, reps: 4, rest: 2000, ratio: 149.33 / 137.12 };

/** What a continuous swim would take by published rest data; null where the rest was not measured. */
export function restAwareEstimate(
  set: SwumSet,
  distance: number,
  further: readonly Caution[],
): Estimate | null {
  const times = set.reps.map((rep) => finishOf(rep).time);
  const rests = times.slice(0, -1).map((time) => restAfter(set, time));
  const known = rests.filter((rest) => rest !== null);
  if (known.length === 0) return null;
  const rest = meanOf(known);
  const metres = convertDistance(set.repDistance, set.pool.unit, 'm');
  const swum = (meanOf(times) * distance) / set.repDistance;

  const fifties =
    metres === FOUR_FIFTIES.distance &&
    times.length === FOUR_FIFTIES.reps &&
    distance === set.repDistance * FOUR_FIFTIES.reps &&
    Math.abs(rest - FOUR_FIFTIES.rest) <= 100;
  if (fifties) {
    return estimate(
      swum * FOUR_FIFTIES.ratio,
      'rest-aware-4x50',
      'The swimmer loses as twelve boys of 15 did: a 200 flat out took 8.9 % longer than 4 × 50 on 20 s (Beidaris and Platanou 2025).',
      further,
    );
  }
  const measured = attempt(() => restGain(metres, nearestHundredth(rest)));
  if (!measured.ok) return null;
  const { gain, interpolated } = measured.value;
  return estimate(
    swum * (1 + gain),
    'rest-aware-10s',
    `Reps on 10 s rest are ${(100 * gain).toFixed(2)} % faster than a continuous swim at the same lactate (Olbrecht et al. 1985, 59 men at the effort of a long swim)${interpolated ? ', read between two measured distances' : ''}.`,
    further,
  );
}

function estimate(
  time: number,
  method: string,
  assumption: string,
  further: readonly Caution[],
): Estimate {
  return {
    time: nearestHundredth(time),
    range: raceToRaceRange(time),
    method,
    assumptions: [assumption],
    cautions: [
      ...cautionsWhere([
        true,
        'contested',
        'Studies of rest disagree: with 50s on 10 s one found 11 % and another nothing. The effort and the swimmers differed.',
      ]),
      ...further,
    ],
  };
}
