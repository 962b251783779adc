import {
  hundredths,
  parseSet,
  parseTime,
  reserveThrough,
  SCM,
  SCY,
  splitsFromLaps,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seeded } from '../sets/deck/simulate.js';

const model = { speed: 1.3, reserve: 20 };
const linear = { recovery: { form: 'linear' } } as const;
const differential = { recovery: { form: 'differential' } } as const;
const integral = (tau: number) => ({ recovery: { form: 'integral', tau } }) as const;

describe('reserveThrough', () => {
  test('a steady swim above critical speed runs out where the reserve is spent', () => {
    // 1.40 m/s over 1.30: 20 m last 200 s, which is 280 m.
    const trace = reserveThrough(parseSet('420 in 5:00'), model, linear);
    expect(trace.runsOut?.rep).toBe(1);
    expect(trace.runsOut?.distance).toBeCloseTo(280, 1);
    expect(trace.verdict).toBe('beyond');
  });

  test('linear: 100s at 1.5 m/s on 10 s rest lose a third of a metre each, and fail in the 22nd', () => {
    const set = parseSet('30 x 100 in 1:06.67 r 10');
    const { steps, runsOut } = reserveThrough(set, model, linear);
    expect(steps[0]?.afterSwim).toBeCloseTo(6.67, 2);
    expect(runsOut?.rep).toBe(22);
  });

  test('differential: many reps settle where each rest gives back what a swim takes', () => {
    const { lowest } = reserveThrough(parseSet('200 x 100 in 1:12 on 1:20'), model, differential);
    expect(lowest).toBeCloseTo(20 - 6.4 / (1 - Math.exp(-0.52)), 6);
  });

  test('a swim below critical speed gives back, in each form', () => {
    const set = parseSet('100 in 1:12 on 1:12\n100 in 1:40 on 1:40');
    for (const options of [linear, differential, integral(300)]) {
      const { steps } = reserveThrough(set, model, options);
      expect(steps[1]?.afterSwim).toBeGreaterThan(steps[0]?.afterSwim as number);
    }
  });

  test('reads a swum set like the planned one, and yards as yards', () => {
    const rep = splitsFromLaps(50, [3500, 3700].map(hundredths));
    const swum = {
      pool: SCM,
      repDistance: 100,
      reps: Array(10).fill(rep),
      sendOff: parseTime('1:20'),
    };
    const planned = parseSet('10 x 100 in 1:12 on 1:20');
    expect(reserveThrough(swum, model, differential).lowest).toBeCloseTo(
      reserveThrough(planned, model, differential).lowest,
      9,
    );
    const yards = reserveThrough({ ...swum, pool: SCY }, model, differential);
    const asYards = reserveThrough(planned, model, { ...differential, pool: SCY });
    expect(yards.lowest).toBeGreaterThan(reserveThrough(swum, model, differential).lowest);
    expect(asYards.lowest).toBeCloseTo(yards.lowest, 9);
  });

  test.each([
    ['no recovery', {}, 'unknown-choice'],
    ['an integral form without its constant', { recovery: { form: 'integral' } }, 'out-of-range'],
  ])('refuses %s', (_, options, code) => {
    const call = () => reserveThrough(parseSet('4 x 100 in 1:12 on 1:20'), model, options as never);
    expect(call).toThrow(expect.objectContaining({ code }));
  });

  test('refuses a set whose times or rests are open', () => {
    const incomplete = expect.objectContaining({ code: 'set-incomplete' });
    expect(() => reserveThrough(parseSet('4 x 100 on 1:20'), model, linear)).toThrow(incomplete);
    const rep = splitsFromLaps(100, [hundredths(7200)]);
    const set = { pool: SCM, repDistance: 100, reps: [rep, rep] };
    expect(() => reserveThrough(set, model, linear)).toThrow(incomplete);
  });

  test('the verdict is no finer than three words', () => {
    const verdict = (set: string) => reserveThrough(parseSet(set), model, differential).verdict;
    expect(verdict('4 x 100 in 1:20 on 1:30')).toBe('comfortable');
    expect(verdict('10 x 100 in 1:12 on 1:20')).toBe('borderline');
    expect(verdict('4 x 100 in 1:00 on 1:05')).toBe('beyond');
  });

  // The closed forms against small steps of the equations they solve.
  test.each([
    ['linear', linear, (d: number, v: number) => (d > 0 || v > 1.3 ? v - 1.3 : 0)],
    [
      'differential',
      differential,
      (d: number, v: number) => (v >= 1.3 ? v - 1.3 : -((1.3 - v) * d) / 20),
    ],
    ['integral', integral(300), (d: number, v: number) => Math.max(0, v - 1.3) - d / 300],
  ] as const)('%s: agrees with small steps of its equation', (_, options, rate) => {
    const random = seeded(3);
    for (let run = 0; run < 5; run++) {
      const swim = 70 + 10 * random();
      const rest = 5 + 20 * random();
      const [t, r] = [Math.round(swim), Math.round(rest)];
      const set = parseSet(`3 x 100 in 1:${String(t - 60).padStart(2, '0')} r ${r}`);
      const { steps } = reserveThrough(set, model, options);
      let deficit = 0;
      const advance = (speed: number, seconds: number) => {
        for (let i = 0; i < seconds * 1000; i++)
          deficit = Math.max(0, deficit + rate(deficit, speed) / 1000);
      };
      for (const { afterSwim } of steps) {
        advance(100 / t, t);
        expect(Math.abs(20 - deficit - afterSwim)).toBeLessThan(0.01);
        advance(0, r);
      }
    }
  });

  test('more rest never leaves less', () => {
    const rest = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(rest, rest, (a, b) => {
        const lowest = (r: number) =>
          reserveThrough(parseSet(`5 x 100 in 1:15 r ${r}`), model, differential).lowest;
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(lowest(more)).toBeGreaterThanOrEqual(lowest(less));
      }),
    );
  });
});
