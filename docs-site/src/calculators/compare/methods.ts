import {
  convertDistance,
  type Estimate,
  fitCriticalSpeed,
  fitPowerLaw,
  isPacingError,
  type Pool,
  powerLawThrough,
  projectFromSet,
  type SwumSet,
  type Trial,
  timeFromCriticalSpeed,
  timeFromPowerLaw,
} from 'backhalf';
import { distanceText } from '~/ui/wording';

/** One way to estimate the race, and what it makes of these swims. */
export interface Method {
  readonly name: string;
  /** None where it cannot answer. */
  readonly estimate: Estimate | null;
  /** Then what it would take, in a sentence. */
  readonly lacks: string | null;
}

export interface Known {
  readonly pool: Pool;
  /** The race's distance, in the pool's unit and in metres. */
  readonly race: number;
  readonly metres: number;
  /** In metres. */
  readonly swims: readonly Trial[];
  readonly set: SwumSet | null;
  /** A published exponent, where one was chosen. */
  readonly exponent: number | null;
}

/** Every method, in the same order whether it can answer or not. */
export function methodsOf({ pool, race, metres, swims, set, exponent }: Known): readonly Method[] {
  return [
    method('Twice the second halves', () =>
      set === null ? 'Needs a reading set.' : projectFromSet(set, { distance: race, pool }),
    ),
    method('Critical speed', () =>
      swims.length < 2 ? needsTwo : timeFromCriticalSpeed(fitCriticalSpeed(swims), metres),
    ),
    method('Power law, fitted', () =>
      swims.length < 2 ? needsTwo : timeFromPowerLaw(fitPowerLaw(swims), metres),
    ),
    ...(exponent === null ? [] : [stretched(exponent, { pool, metres, swims })]),
  ];
}

/** One swim stretched by a published exponent. */
function stretched(
  exponent: number,
  { swims, metres, pool }: Pick<Known, 'swims' | 'metres' | 'pool'>,
): Method {
  const from = startOf(swims, exponent, metres);
  const name = `Exponent ${exponentText(exponent)}`;
  if (from === undefined) {
    return method(name, () => 'Needs a race over another distance to start from.');
  }
  const start = distanceText(convertDistance(from.distance, 'm', pool.unit));
  return method(`${name} from the ${start}`, () =>
    timeFromPowerLaw(powerLawThrough(from, exponent), metres),
  );
}

/** The nearest swim that the track record knows beside the race; else the nearest, as a ratio. */
function startOf(swims: readonly Trial[], exponent: number, metres: number): Trial | undefined {
  const off = ({ distance }: Trial) => Math.abs(Math.log(distance / metres));
  const near = swims.filter((swim) => off(swim) > 0).sort((a, b) => off(a) - off(b));
  const known = near.find(
    (swim) => timeFromPowerLaw(powerLawThrough(swim, exponent), metres).range !== null,
  );
  return known ?? near[0];
}

const needsTwo = 'Needs two races or trials over different distances.';

export const exponentText = (exponent: number): string =>
  String(Math.round(exponent * 1000) / 1000);

function method(name: string, answer: () => Estimate | string): Method {
  try {
    const found = answer();
    return typeof found === 'string'
      ? { name, estimate: null, lacks: found }
      : { name, estimate: found, lacks: null };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { name, estimate: null, lacks: error.message };
  }
}
