import {
  fitCriticalSpeed,
  fitPowerLaw,
  hundredths,
  timeFromCriticalSpeed,
  timeFromPowerLaw,
} from 'backhalf';
import { ninetyPercent, type Seen } from '../../../packages/core/src/projection/recorded-range.js';
import { deviationOf, meanOf } from '../../../packages/core/src/statistics.js';
import { type Swimmer, swimmers } from './swimmers.js';

/** One swimmer's deviation from a method, and at which Games. */
interface Case {
  readonly year: string;
  readonly sex: 'M' | 'W';
  readonly value: number;
}

const trials = (swimmer: Swimmer, distances: readonly number[]) =>
  distances.map((distance) => ({ distance, time: hundredths(swimmer.best.get(distance)!) }));

const everyone = swimmers();

function casesOf(distances: readonly number[], value: (swimmer: Swimmer) => number): Case[] {
  return everyone
    .filter(({ best }) => distances.every((distance) => best.has(distance)))
    .map((swimmer) => ({ year: swimmer.year, sex: swimmer.sex, value: value(swimmer) }));
}

/** The exponent that joins each swimmer's best times at two distances. */
const exponents = (between: readonly [number, number]) =>
  casesOf(between, (swimmer) => fitPowerLaw(trials(swimmer, between)).exponent);

/** ln(swum / estimated) for each swimmer, of a method fitted to two distances. */
const misses = (method: string, from: readonly number[], to: number) =>
  casesOf([...from, to], (swimmer) => {
    const races = trials(swimmer, from);
    const { time } =
      method === 'critical-speed'
        ? timeFromCriticalSpeed(fitCriticalSpeed(races), to)
        : timeFromPowerLaw(fitPowerLaw(races), to);
    return Math.log(swimmer.best.get(to)! / time);
  });

const WHO = { M: 'men', W: 'women', both: 'men and women' };

function seen(cases: readonly Case[]): Seen {
  const values = cases.map(({ value }) => value);
  const sexes = new Set(cases.map(({ sex }) => sex));
  return {
    swims: cases.length,
    who: WHO[sexes.size === 2 ? 'both' : [...sexes][0]!],
    mean: round(meanOf(values)),
    spread: round(deviationOf(values)),
  };
}

const round = (value: number) => Number(value.toFixed(5));

/** How many cases lie in the 90 % range that the other Games alone would give. */
function covered(cases: readonly Case[]): number {
  return cases.filter(({ year, value }) => {
    const { low, high } = ninetyPercent(seen(cases.filter((other) => other.year !== year)));
    return low <= Math.exp(value) && Math.exp(value) <= high;
  }).length;
}

const PAIRS = [
  [200, 400],
  [200, 800],
  [200, 1500],
  [400, 800],
  [400, 1500],
] as const;

const FITS = ['critical-speed', 'power-law'].flatMap((method) =>
  [800, 1500].map((to) => ({ method, from: [200, 400], to })),
);

/** The figures of the track record, worked out from the races. Nobody swam 400, 800 and 1500. */
export function measure() {
  return {
    exponentsSeen: PAIRS.map((between) => {
      const cases = exponents(between);
      return { between, ...seen(cases), covered: covered(cases) };
    }),
    fitsSeen: FITS.map((fit) => {
      const cases = misses(fit.method, fit.from, fit.to);
      return { ...fit, ...seen(cases), covered: covered(cases) };
    }),
  };
}
