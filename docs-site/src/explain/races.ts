import { halvesOf, hundredths, lapsOf, type Splits, splitsFromLaps } from 'backhalf';
import table from '../../../tests/reference/data/championship-freestyle.csv?raw';

/** A published race of the open data: official results of the Olympic Games 2000–2016. */
interface Race {
  readonly sex: 'M' | 'W';
  readonly distance: number;
  readonly phase: string;
  readonly place: number;
  readonly swim: Splits;
}

const [head = '', ...lines] = table.trim().split('\n');
const names = head.split(',');

export const races: readonly Race[] = lines.map((line) => {
  const cells = Object.fromEntries(line.split(',').map((cell, i) => [names[i], cell]));
  const laps = String(cells['laps'])
    .split(' ')
    .map((lap) => hundredths(Number(lap)));
  return {
    sex: cells['sex'] as 'M' | 'W',
    distance: Number(cells['distance']),
    phase: String(cells['phase']),
    place: Number(cells['place'] || Number.NaN),
    swim: splitsFromLaps(50, laps),
  };
});

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** By how much the first lap was faster than those between it and the last: hundredths, a mean. */
export function diveCredit(distance: number): number {
  const credits = races
    .filter((race) => race.distance === distance)
    .map(({ swim }) => {
      const [first = 0, ...rest] = lapsOf(swim);
      return mean(rest.slice(0, -1)) - first;
    });
  return mean(credits);
}

/** How the finalists of an event split it: medallists against the others. */
export interface EventSplits {
  readonly name: string;
  readonly medallists: Group;
  readonly others: Group;
}

interface Group {
  readonly swims: number;
  /** Second half less first, over the whole time: a mean ratio. */
  readonly gap: number;
  /** Share of negative splits, a ratio. */
  readonly negative: number;
  /** The same with the dive's mean credit taken out of the first half. */
  readonly negativeWithoutDive: number;
}

function groupOf(swims: readonly Splits[], credit: number): Group {
  const halves = swims.map((swim) => halvesOf(swim));
  const share = (dive: number) =>
    halves.filter(({ first, second }) => second < first + dive).length / halves.length;
  return {
    swims: swims.length,
    gap: mean(halves.map(({ first, second }) => (second - first) / (first + second))),
    negative: share(0),
    negativeWithoutDive: share(credit),
  };
}

/** The finals of one event, over all the Games of the file; none where it has no finals. */
export function finalsOf(sex: 'M' | 'W', distance: number): EventSplits | null {
  const finals = races.filter(
    (race) => race.sex === sex && race.distance === distance && race.phase === 'final',
  );
  const pick = (medal: boolean) =>
    finals.filter(({ place }) => place <= 3 === medal).map(({ swim }) => swim);
  if (finals.length === 0) return null;
  const credit = diveCredit(distance);
  return {
    name: `${sex === 'M' ? 'Men' : 'Women'} ${distance}`,
    medallists: groupOf(pick(true), credit),
    others: groupOf(pick(false), credit),
  };
}

/** Every event that has finals in the file, the longest first. */
export const finals: readonly EventSplits[] = [1500, 800, 400, 200].flatMap((distance) =>
  (['M', 'W'] as const).flatMap((sex) => finalsOf(sex, distance) ?? []),
);
