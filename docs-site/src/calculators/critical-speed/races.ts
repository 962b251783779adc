import {
  type CriticalSpeed,
  convertDistance,
  type Estimate,
  fitPowerLaw,
  isPacingError,
  type Trial,
  timeFromCriticalSpeed,
  timeFromPowerLaw,
  type Unit,
} from 'backhalf';

/** What a method makes of a distance: an estimate, or why there is none. */
export type Answer = Estimate | string;

/** A race distance, in the pool's unit, by both methods. */
export interface RaceRow {
  readonly distance: number;
  readonly settles: Answer;
  readonly fades: Answer;
}

const usual: Readonly<Record<Unit, readonly number[]>> = {
  m: [400, 800, 1500],
  yd: [500, 1000, 1650],
};

/** The typed distance and the usual ones, shortest first. */
export function racesOf(
  trials: readonly Trial[],
  model: CriticalSpeed,
  race: number,
  unit: Unit,
): readonly RaceRow[] {
  const distances = [...new Set([...usual[unit], race])].sort((a, b) => a - b);
  return distances.map((distance) => {
    const metres = convertDistance(distance, unit, 'm');
    return {
      distance,
      settles: orWhyNot(() => timeFromCriticalSpeed(model, metres)),
      fades: orWhyNot(() => timeFromPowerLaw(fitPowerLaw(trials), metres)),
    };
  });
}

function orWhyNot(act: () => Estimate): Answer {
  try {
    return act();
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return error.message;
  }
}
