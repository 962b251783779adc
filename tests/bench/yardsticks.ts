import type { SwumSet } from 'backhalf';
import { Decimal } from 'decimal.js';
import { Duration } from 'luxon';
import { Temporal } from 'temporal-polyfill';
import * as tinyduration from 'tinyduration';

/** General duration libraries, on the same values in the text that they read. */
export const durationLibraries: readonly {
  readonly name: string;
  readonly parse: (iso: string) => unknown;
  readonly format: (time: number) => unknown;
}[] = [
  {
    name: 'luxon',
    parse: (iso) => Duration.fromISO(iso).toMillis(),
    format: (time) => Duration.fromMillis(time * 10).toFormat('m:ss.SSS'),
  },
  {
    name: 'temporal-polyfill',
    parse: (iso) => Temporal.Duration.from(iso).total('milliseconds'),
    format: (time) =>
      Temporal.Duration.from({
        minutes: Math.floor(time / 6_000),
        milliseconds: (time % 6_000) * 10,
      }).toString(),
  },
  {
    name: 'tinyduration',
    parse: tinyduration.parse,
    format: (time) =>
      tinyduration.serialize({ minutes: Math.floor(time / 6_000), seconds: (time % 6_000) / 100 }),
  },
];

/** The figures of a set reading by decimal arithmetic: means, deviation, halves, honest pace, fade. */
export function readInDecimals({ reps }: SwumSet) {
  const sum = (values: Decimal[]) => values.reduce((a, b) => a.plus(b), new Decimal(0));
  const mean = (values: Decimal[]) => sum(values).div(values.length);
  const totals = reps.map(({ marks }) => new Decimal(marks[1]!.time));
  const firsts = reps.map(({ marks }) => new Decimal(marks[0]!.time));
  const seconds = totals.map((total, i) => total.minus(firsts[i]!));
  const average = mean(totals);
  const squares = totals.map((total) => total.minus(average).pow(2));
  const third = Math.floor(totals.length / 3);
  return {
    average: average.round(),
    best: Decimal.min(...totals),
    slowest: Decimal.max(...totals),
    spread: sum(squares)
      .div(totals.length - 1)
      .sqrt(),
    fade: mean(totals.slice(-third))
      .minus(mean(totals.slice(0, third)))
      .round(),
    halves: [mean(firsts).round(), mean(seconds).round()],
    comparisons: seconds.map((second, i) => [second.minus(firsts[i]!), second.div(firsts[i]!)]),
    rests: totals.map((total) => new Decimal(9_000).minus(total)),
    honestPace: mean(seconds).times(2).round(),
    repPace: average.round(),
  };
}
