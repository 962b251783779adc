import {
  compareEstimates,
  type Estimate,
  fitCriticalSpeed,
  fitPowerLaw,
  hundredths,
  powerLawThrough,
  timeFromCriticalSpeed,
  timeFromPowerLaw,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const range = (low: number, high: number, covers = '90 %') => ({
  low: hundredths(low),
  high: hundredths(high),
  covers,
});
const estimate = (time: number, parts: Partial<Estimate> = {}): Estimate => ({
  time: hundredths(time),
  range: null,
  method: 'back-half',
  assumptions: ['Something.'],
  cautions: [],
  ...parts,
});
const fast = estimate(100_000, { range: range(98_000, 102_000), method: 'critical-speed' });
const middle = estimate(101_000, { range: range(101_000, 103_000), method: 'power-law' });
const slow = estimate(105_000, { range: range(103_000, 107_000) });
const bare = estimate(104_000, { method: 'a-rule', assumptions: ['The moon is full.'] });

describe('compareEstimates', () => {
  test('orders by time, equal ones as they came', () => {
    const twin = { ...fast, method: 'power-law' };
    const { estimates } = compareEstimates([slow, fast, middle, twin]);
    expect(estimates).toEqual([fast, twin, middle, slow]);
  });

  test('holds each two against each other', () => {
    const { pairs } = compareEstimates([slow, middle, fast]);
    expect(pairs).toMatchObject([
      {
        faster: 0,
        slower: 1,
        difference: 1000,
        ranges: 'overlap',
        overlap: { low: 101_000, high: 102_000 },
      },
      { faster: 0, slower: 2, difference: 5000, ranges: 'apart', overlap: null },
      {
        faster: 1,
        slower: 2,
        difference: 4000,
        ranges: 'overlap',
        overlap: { low: 103_000, high: 103_000 },
      },
    ]);
  });

  test('where one has no range, nothing is known of the overlap', () => {
    const { pairs } = compareEstimates([bare, slow]);
    expect(pairs).toMatchObject([{ difference: 1000, ranges: 'unknown', overlap: null }]);
    expect(compareEstimates([fast, bare]).pairs).toMatchObject([{ ranges: 'unknown' }]);
  });

  test('says why two methods differ', () => {
    const why = (...list: Estimate[]) => compareEstimates(list).pairs[0]!.why;
    expect(why(fast, middle)).toBe(
      'critical-speed takes for granted: pace settles at a speed that can be held, with one reserve on top; power-law takes for granted: pace keeps fading with every doubling of the distance.',
    );
    expect(why(bare, slow)).toBe(
      'a-rule takes for granted: The moon is full; back-half takes for granted: the second half of a practice rep is the pace a race is held at.',
    );
    expect(why({ ...bare, assumptions: [] }, slow)).toContain(
      'a-rule takes for granted: something it does not say;',
    );
    expect(why(fast, { ...fast })).toBe(
      'Both are critical-speed estimates, from other swims or another setting.',
    );
  });

  test.each([
    { goal: 97_999, places: ['faster', 'faster', 'unknown', 'faster'] },
    { goal: 98_000, places: ['within', 'faster', 'unknown', 'faster'] },
    { goal: 102_000, places: ['within', 'within', 'unknown', 'faster'] },
    { goal: 103_000, places: ['slower', 'within', 'unknown', 'within'] },
    { goal: 107_001, places: ['slower', 'slower', 'unknown', 'slower'] },
  ])('a goal of $goal hundredths', ({ goal, places }) => {
    const { goal: placed } = compareEstimates([fast, middle, bare, slow], hundredths(goal));
    expect(placed?.map(({ place }) => place)).toEqual(places);
    expect(placed?.map(({ difference }) => difference)).toEqual(
      [100_000, 101_000, 104_000, 105_000].map((time) => goal - time),
    );
  });

  test('without a goal there is none, and one estimate has nothing to differ from', () => {
    expect(compareEstimates([fast])).toEqual({
      estimates: [fast],
      pairs: [],
      goal: null,
      cautions: [],
    });
  });

  test('warns where ranges cover different things, or one has none', () => {
    const codes = (...list: Estimate[]) => compareEstimates(list).cautions.map(({ code }) => code);
    expect(codes(fast, middle)).toEqual([]);
    expect(codes(fast, { ...middle, range: range(1, 2, '95 %') })).toEqual(['ranges-differ']);
    expect(codes(fast, bare)).toEqual(['ranges-differ']);
  });

  // The same two races: official times of one record holder gave 920.48 s over the 1500.
  test('one swimmer by every method that has its inputs', () => {
    const races = [
      { distance: 200, time: hundredths(11_298) },
      { distance: 400, time: hundredths(23_646) },
    ];
    const estimates = [
      timeFromPowerLaw(fitPowerLaw(races), 1500),
      timeFromCriticalSpeed(fitCriticalSpeed(races), 1500),
      timeFromPowerLaw(powerLawThrough(races[1]!, 1.04), 1500),
    ];
    const { estimates: ordered, pairs } = compareEstimates(estimates, hundredths(92_048));
    expect(ordered.map(({ method, time }) => [method, time])).toEqual([
      ['critical-speed', 91_560],
      ['power-law', 93_487],
      ['power-law', 96_695],
    ]);
    expect(pairs.map(({ ranges }) => ranges)).toEqual(['overlap', 'overlap', 'overlap']);
  });

  test('there is never an average: every time that comes out went in', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 1e6 }), { minLength: 1 }), (times) => {
        const { estimates, pairs } = compareEstimates(times.map((time) => estimate(time)));
        expect(estimates.map(({ time }) => time)).toEqual([...times].sort((a, b) => a - b));
        expect(pairs).toHaveLength((times.length * (times.length - 1)) / 2);
      }),
    );
  });

  test('is plain data', () => {
    const comparison = compareEstimates([fast, middle, bare], hundredths(100_000));
    expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
    expect(compareEstimates(comparison.estimates, hundredths(100_000))).toEqual(comparison);
  });

  test('refuses what is no list of estimates, and no goal', () => {
    const code = (list: unknown, goal?: unknown) =>
      codeOf(() => compareEstimates(list as never, goal as never));
    expect(code([])).toBe('out-of-range');
    expect(code(fast)).toBe('wrong-shape');
    expect(code([fast], null)).toBe('not-a-time');
    expect(code([fast], 0)).toBe('not-a-time');
    expect(code(Array(101).fill(fast))).toBe('out-of-range');
    expect(compareEstimates(Array(100).fill(fast)).pairs).toHaveLength(4950);
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    const part = fc.record({
      time: nearly(fc.integer({ min: 1, max: 1e6 })),
      range: nearly(fc.constantFrom(null, range(1, 2))),
      method: nearly(fc.constantFrom('power-law', '__proto__', 'constructor')),
      assumptions: nearly(fc.array(fc.string())),
      cautions: nearly(fc.constant([])),
    });
    fc.assert(
      fc.property(nearly(fc.array(nearly(part), { maxLength: 4 })), anything, (list, goal) =>
        isSound(() => compareEstimates(list as never, goal as never)),
      ),
    );
  });
});
