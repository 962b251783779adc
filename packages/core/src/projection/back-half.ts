import { type Caution, cautionsWhere } from '../caution.js';
import { snap } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { readSet } from '../sets/read-set.js';
import { honestTime, markedHalves } from '../sets/second-halves.js';
import type { SwumSet } from '../sets/swum-set.js';
import { START_CREDIT } from '../splits/start-credit.js';
import { formatTime } from '../time/format-time.js';
import { hundredths } from '../time/hundredths.js';
import { type Estimate, raceToRaceRange } from './estimate.js';

/** Twice the mean second half, held over a distance in the set's unit: the estimate with its context. */
export function backHalfEstimate(
  set: SwumSet,
  distance: number,
  further: readonly Caution[],
): Estimate {
  const halves = markedHalves(set);
  const time = honestTime(set, halves, distance);
  if (time === null) {
    const message =
      'No rep has a mark at or before halfway, so there is no second half to read; time the halves.';
    throw new PacingError('halfway-not-bracketed', message, set);
  }
  const { unit } = set.pool;
  const swum = snap(set.reps.length * set.repDistance);
  return {
    time,
    range: raceToRaceRange(time),
    method: 'back-half',
    assumptions: [
      `Each ${snap(set.repDistance)} ${unit} of the race takes twice the mean second half of ${halves.length} timed ${halves.length === 1 ? 'rep' : 'reps'}.`,
      diveAssumption(distance),
    ],
    cautions: [
      ...cautionsWhere([
        true,
        'rule-untested',
        'Racing at twice the second half is common practice; no published study has tested it.',
      ]),
      ...readSet(set).cautions,
      ...cautionsWhere([
        distance > swum,
        'race-longer-than-set',
        `The race is longer than the ${swum} ${unit} swum in the set: endurance over the rest is assumed, not seen.`,
      ]),
      ...further,
    ],
  };
}

/** The nearest measured race; its dive is told, never added. */
function diveAssumption(distance: number): string {
  const near = START_CREDIT.reduce((a, b) =>
    Math.abs(b.distance - distance) < Math.abs(a.distance - distance) ? b : a,
  );
  const credit = formatTime(hundredths(near.credit), { signed: true }).slice(1);
  return `The dive is not in the figure. It is worth something once: the first 50 m of ${near.swims} published ${near.distance} m races was ${credit} s faster than the laps after it, on average; nothing of that was added.`;
}
