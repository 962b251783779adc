import { readFileSync, writeFileSync } from 'node:fs';
import {
  type Estimate,
  fitCriticalSpeed,
  fitPowerLaw,
  hundredths,
  powerLawThrough,
  type Trial,
  timeFromCriticalSpeed,
  timeFromPowerLaw,
  trackRecord,
} from 'backhalf';
import { describe, expect, test } from 'vitest';
import { measure } from './measure.js';
import { sourceOf } from './source.js';
import { swimmers } from './swimmers.js';

// Source of every figure here: official results of the Olympic Games of 2000, 2004, 2008 and 2016, by
// the open dataset swimset. UPDATE_TRACK_RECORD=1 writes the constants file anew; read the diff.
const file = new URL('../../../packages/core/src/projection/track-record.ts', import.meta.url);

const sum = (rows: readonly Held[], field: keyof Held) =>
  rows.reduce((total, row) => total + row[field], 0);

test('the constants are what the races give', () => {
  const source = sourceOf(measure());
  if (process.env['UPDATE_TRACK_RECORD'] === '1') writeFileSync(file, source);
  expect(readFileSync(file, 'utf8')).toBe(source);
});

describe('with one Games left out, 90 % ranges cover 85 to 95 % of its swims', () => {
  const rows = trackRecord([1.04]);
  const fitted = rows.filter(({ exponent }) => exponent === null);
  test.each([
    ['every method', rows],
    ['power law, exponent given', rows.filter(({ exponent }) => exponent !== null)],
    ['power law from two races', fitted.filter(({ method }) => method === 'power-law')],
    ['critical speed from two races', fitted.filter(({ method }) => method === 'critical-speed')],
  ])('%s', (_, of) => {
    const share = sum(of, 'covered') / sum(of, 'swims');
    expect(sum(of, 'swims')).toBeGreaterThan(25);
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(0.95);
  });
});

interface Held {
  readonly swims: number;
  readonly covered: number;
}

/** How many swims lay in the range that an estimate from the swimmer's other races states. */
function held(from: readonly number[], to: number, estimate: (races: Trial[]) => Estimate): Held {
  const able = swimmers().filter(({ best }) => [...from, to].every((metres) => best.has(metres)));
  const covered = able.filter(({ best }) => {
    const races = from.map((distance) => ({ distance, time: hundredths(best.get(distance)!) }));
    const { time, range } = estimate(races);
    expect(range!.low).toBeLessThanOrEqual(time);
    expect(range!.high).toBeGreaterThanOrEqual(time);
    return range!.low <= best.get(to)! && best.get(to)! <= range!.high;
  });
  return { swims: able.length, covered: covered.length };
}

describe('the ranges stated to users hold 85 to 95 % of the swims they rest on', () => {
  const distances = [200, 400, 800, 1500];
  const pairs = distances.flatMap((from) =>
    distances.filter((to) => to !== from).map((to) => [from, to] as const),
  );
  const known = pairs.filter((pair) => !(pair.includes(800) && pair.includes(1500)));

  test.each([1.03, 1.04, 1.06])('from one race to another, exponent %d', (exponent) => {
    const all = known.map(([from, to]) =>
      held([from], to, ([race]) => timeFromPowerLaw(powerLawThrough(race!, exponent), to)),
    );
    const share = sum(all, 'covered') / sum(all, 'swims');
    expect(sum(all, 'swims')).toBeGreaterThan(500);
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(0.95);
  });

  // 29 swims: one more or less is 3 %, so only the lower bound says anything.
  test('from 200 and 400', () => {
    const settles = (to: number) => (races: Trial[]) =>
      timeFromCriticalSpeed(fitCriticalSpeed(races), to);
    const fades = (to: number) => (races: Trial[]) => timeFromPowerLaw(fitPowerLaw(races), to);
    for (const method of [settles, fades]) {
      const all = [800, 1500].map((to) => held([200, 400], to, method(to)));
      expect(sum(all, 'covered') / sum(all, 'swims')).toBeGreaterThan(0.85);
    }
  });
});

test('what the races say: critical speed from 200 and 400 promises too fast a 1500, the law too slow', () => {
  const to1500 = trackRecord([]).filter(({ to }) => to === 1500);
  const bias = Object.fromEntries(to1500.map((row) => [row.method, row.bias]));
  expect(bias['critical-speed']).toBeCloseTo(-0.03, 2);
  expect(bias['power-law']).toBeCloseTo(0.03, 2);
});
