import { readFileSync } from 'node:fs';

/** One swimmer at one of the Games: the best time at each distance swum, in hundredths of a second. */
export interface Swimmer {
  readonly year: string;
  readonly sex: 'M' | 'W';
  readonly best: ReadonlyMap<number, number>;
}

/**
 * The swimmers of the open race data. Source: official results of the Olympic Games of 2000, 2004,
 * 2008 and 2016, by the open dataset swimset (adghayes/swimset); freestyle, 50 m pool, without names.
 */
export function swimmers(): readonly Swimmer[] {
  const file = new URL('../data/championship-freestyle.csv', import.meta.url);
  const [, ...rows] = readFileSync(file, 'utf8').trim().split('\n');
  const found = new Map<string, { year: string; sex: 'M' | 'W'; best: Map<number, number> }>();
  for (const row of rows) {
    const [year = '', sex, number, distance, , , , time] = row.split(',');
    const key = `${year} ${sex} ${number}`;
    const swimmer = found.get(key) ?? { year, sex: sex as 'M' | 'W', best: new Map() };
    const before = swimmer.best.get(Number(distance)) ?? Infinity;
    swimmer.best.set(Number(distance), Math.min(before, Number(time)));
    found.set(key, swimmer);
  }
  return [...found.values()];
}
