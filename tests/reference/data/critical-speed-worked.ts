import {
  fitCriticalSpeed,
  formatTime,
  hundredths,
  type Trial,
  timeFromCriticalSpeed,
} from 'backhalf';
import type { Reference } from '../reference.js';

type Swims = readonly (readonly [distance: number, time: number])[];

interface Published {
  readonly speed: number;
  readonly reserve: number;
  readonly rSquared: number | null;
  readonly speedError: number | null;
  readonly reserveError: number | null;
  readonly speedFrom: number | null;
  readonly speedTo: number | null;
  /** The 1500: time and prediction interval, in hundredths of a second. */
  readonly race: number;
  readonly raceFrom: number | null;
  readonly raceTo: number | null;
}

const WOMEN: Swims = [
  [200, 11_298],
  [400, 23_646],
  [800, 48_479],
  [1500, 92_048],
];
const MEN: Swims = [
  [200, 10_296],
  [400, 22_008],
  [800, 45_865],
  [1500, 87_456],
];
const INVENTED: Swims = [
  [200, 14_000],
  [400, 29_500],
  [800, 61_200],
];

const ten = (value: number | null) => (value === null ? null : Number(value.toPrecision(10)));
const toTen = <T extends object>(values: T): T =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, ten(value)])) as T;

/** Exact fractions and a statistics package gave these; they check the arithmetic, not the model. */
export const criticalSpeedWorked: Reference<Swims, Published> = {
  key: 'critical-speed-worked',
  title: 'Critical speed: least squares of distance on time, and the 1500 it gives',
  source: 'worked with exact fractions and a statistics package from the times shown',
  standing: 'worked',
  rows: [
    {
      place: 'four swims of one set of records',
      input: WOMEN,
      published: toTen({
        speed: 1.6094378138647,
        reserve: 18.975843408363,
        rSquared: 0.999998312404,
        speedError: 0.0014784063146775,
        reserveError: 0.7930456545451,
        speedFrom: 1.6030767449,
        speedTo: 1.6157988828,
        race: 92_021,
        raceFrom: 91_689,
        raceTo: 92_355,
      }),
    },
    {
      place: 'four swims of another',
      input: MEN,
      published: toTen({
        speed: 1.6834150349241,
        reserve: 27.960962101731,
        rSquared: 0.9999958368383,
        speedError: 0.0024287831812714,
        reserveError: 1.2350135502264,
        speedFrom: 1.6729648243,
        speedTo: 1.6938652455,
        race: 87_444,
        raceFrom: 86_946,
        raceTo: 87_945,
      }),
    },
    {
      place: 'three invented swims: an interval so wide that it is honest to print it',
      input: INVENTED,
      published: toTen({
        speed: 1.2698028782199,
        reserve: 23.505462167936,
        rSquared: 0.9999697665981,
        speedError: 0.0069821050815047,
        reserveError: 2.7962408315042,
        speedFrom: 1.1810868216,
        speedTo: 1.3585189349,
        race: 116_277,
        raceFrom: 110_335,
        raceTo: 123_018,
      }),
    },
    {
      place: 'two swims, 400 and 800',
      input: WOMEN.slice(1, 3),
      published: toTen({
        speed: 1.610759876,
        reserve: 19.1197197278,
        rSquared: null,
        speedError: null,
        reserveError: null,
        speedFrom: null,
        speedTo: null,
        race: 91_937,
        raceFrom: null,
        raceTo: null,
      }),
    },
  ],
  compute: (swims) => {
    const model = fitCriticalSpeed(swims.map(trial));
    const race = timeFromCriticalSpeed(model, 1500);
    return toTen({
      speed: model.speed,
      reserve: model.reserve,
      rSquared: model.rSquared,
      speedError: model.standardErrors?.speed ?? null,
      reserveError: model.standardErrors?.reserve ?? null,
      speedFrom: model.intervals?.speed.low ?? null,
      speedTo: model.intervals?.speed.high ?? null,
      race: race.time,
      raceFrom: race.range?.low ?? null,
      raceTo: race.range?.high ?? null,
    });
  },
  show: (value) =>
    Array.isArray(value)
      ? value.map(([distance, time]) => `${distance} m ${formatTime(hundredths(time))}`).join(', ')
      : JSON.stringify(value),
};

function trial([distance, time]: Swims[number]): Trial {
  return { distance, time: hundredths(time) };
}
