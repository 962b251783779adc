import {
  fitPowerLaw,
  hundredths,
  type PowerLaw,
  powerLawThrough,
  type Trial,
  timeFromPowerLaw,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly, trials } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const swims = (...list: readonly (readonly [number, number])[]): Trial[] =>
  list.map(([distance, time]) => ({ distance, time: hundredths(time) }));
const four = fitPowerLaw(swims([200, 11_298], [400, 23_646], [800, 48_479], [1500, 92_048]));
const race = { distance: 400, time: hundredths(24_000) };
const codes = (law: PowerLaw, distance: number) =>
  timeFromPowerLaw(law, distance).cautions.map(({ code }) => code);

describe('timeFromPowerLaw', () => {
  test('three races and more: a prediction interval, wider than the fit', () => {
    const { time, range } = timeFromPowerLaw(four, 1500);
    // ln T ± t·s·√(1 + 1/n + (x − mean)²/Sxx), worked with a statistics package.
    expect({ time, ...range }).toMatchObject({ time: 92_714, low: 87_276, high: 98_490 });
    expect(range?.covers).toBe('95 % prediction interval of the line through 4 swims');
  });

  test('races that scatter so much that the interval ends in no time at all have no range', () => {
    const towardsZero = fitPowerLaw(swims([100, 10], [200, 21], [400, 120]));
    expect(timeFromPowerLaw(towardsZero, 400).range).toBeNull();
    const pastCounting = fitPowerLaw(swims([100, 893_000], [1000, 9_000_000], [10_000, 1e9]));
    expect(timeFromPowerLaw(pastCounting, 10_000).range).toBeNull();
    expect(codes(pastCounting, 10_000)).toContain('no-range');
  });

  test('one race and an exponent of 1: one pace at any distance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (times) => {
        const law = powerLawThrough(race, 1);
        expect(timeFromPowerLaw(law, 400 * times).time).toBe(24_000 * times);
      }),
    );
  });

  test('one race from 400 to 1500 and back has the range of the track record', () => {
    const there = timeFromPowerLaw(powerLawThrough(race, 1.04), 1500);
    expect(there.range!.covers).toBe(
      '90 % of swims like those of 81 men in the official results of four Olympic Games, 2000–2016, elite, 50 m pool; it says nothing of other swimmers and pools',
    );
    const long = { distance: 1500, time: there.time };
    const back = timeFromPowerLaw(powerLawThrough(long, 1.04), 400);
    expect(back.time).toBe(24_000);
    expect(24_000 / back.range!.low).toBeCloseTo(there.range!.high / there.time, 3);
    expect(24_000 / back.range!.high).toBeCloseTo(there.range!.low / there.time, 3);
  });

  test('the exponent moves the estimate; what swimmers did stays where it was', () => {
    const at = (k: number) => timeFromPowerLaw(powerLawThrough(race, k), 1500);
    expect(at(1.05).time).toBeGreaterThan(at(1.04).time);
    for (const end of ['low', 'high'] as const) {
      expect(Math.abs(at(1.05).range![end] - at(1.04).range![end])).toBeLessThanOrEqual(1);
    }
  });

  test('an exponent that nobody had: the range reaches out to the estimate, and says so', () => {
    const { time, range, cautions } = timeFromPowerLaw(powerLawThrough(race, 1.2), 1500);
    expect(range!.high).toBe(time);
    expect(range!.covers).toContain(', and the estimate itself;');
    expect(cautions.find(({ code }) => code === 'biased-record')?.message).toMatch(
      / 23\.1 % too slow/,
    );
  });

  test('two races give back their own times', () => {
    const law = fitPowerLaw(swims([400, 24_000], [800, 49_400]));
    expect(timeFromPowerLaw(law, 400).time).toBe(24_000);
    expect(timeFromPowerLaw(law, 800).time).toBe(49_400);
  });

  test('is the same for a law that went through JSON', () => {
    for (const law of [four, powerLawThrough(race, 1.06)]) {
      const copy = JSON.parse(JSON.stringify(law));
      expect(timeFromPowerLaw(copy, 1500)).toEqual(timeFromPowerLaw(law, 1500));
    }
  });

  test('names its method and what it takes for granted', () => {
    const { method, assumptions } = timeFromPowerLaw(powerLawThrough(race, 1.04), 1500);
    expect(method).toBe('power-law');
    expect(assumptions).toEqual([
      'Pace keeps fading: twice the distance takes 2.056 times as long (exponent 1.040).',
      'Every swim was flat out, alike in pool, stroke and start.',
    ]);
  });

  test.each([0, -1, 0.5, 1e6 + 1, Number.NaN, Infinity, '1500', null])(
    'refuses %s m',
    (distance) => {
      expect(codeOf(() => timeFromPowerLaw(four, distance as number))).toBe('out-of-range');
    },
  );

  test('refuses a time of nothing', () => {
    const fast = powerLawThrough({ distance: 1e6, time: hundredths(1) }, 1);
    expect(codeOf(() => timeFromPowerLaw(fast, 1))).toBe('not-a-time');
  });

  test('refuses a time that is too large to be exact', () => {
    const slow = powerLawThrough({ distance: 1, time: hundredths(1e9) }, 2);
    expect(codeOf(() => timeFromPowerLaw(slow, 1e6))).toBe('too-large');
  });

  test('refuses a law that is none', () => {
    const broken = (law: unknown) => codeOf(() => timeFromPowerLaw(law as PowerLaw, 1500));
    expect(broken(null)).toBe('wrong-shape');
    expect(broken({ exponent: 1.04 })).toBe('wrong-shape');
    expect(broken({ results: [] })).toBe('too-few-trials');
    expect(broken({ results: [race] })).toBe('out-of-range');
  });

  test('whatever goes in, no NaN and no foreign error comes out; a range holds its estimate', () => {
    const law = fc.oneof(
      trials.map((results) => ({ results })),
      trials.map(([first]) => ({ results: [first], exponent: 1.05 })),
      fc.record({ results: anything, exponent: anything }),
    );
    const distance = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(nearly(law), nearly(distance), (given, metres) =>
        isSound(() => {
          const estimate = timeFromPowerLaw(given as PowerLaw, metres);
          if (estimate.range !== null) {
            expect(estimate.range.low).toBeLessThanOrEqual(estimate.time);
            expect(estimate.range.high).toBeGreaterThanOrEqual(estimate.time);
          }
          return estimate;
        }),
      ),
    );
  });
});

describe('cautions', () => {
  test.each([
    { short: 14_999, long: 17_001, caution: true },
    { short: 15_000, long: 17_001, caution: false },
    { short: 14_999, long: 17_000, caution: false },
  ])(
    'races of $short and $long hundredths, and the bend of records',
    ({ short, long, caution }) => {
      const law = fitPowerLaw(swims([240, short], [270, long]));
      expect(codes(law, 250).includes('bend-crossed')).toBe(caution);
    },
  );

  test('the race asked for counts for the bend too', () => {
    const law = powerLawThrough({ distance: 200, time: hundredths(12_000) }, 1.05);
    expect(codes(law, 100)).not.toContain('bend-crossed');
    expect(codes(law, 400)).toContain('bend-crossed');
  });

  test('outside the distances swum, and without a range', () => {
    const law = fitPowerLaw(swims([400, 24_000], [800, 49_400]));
    expect(codes(law, 1500)).toEqual(['two-trials', 'contested', 'extrapolated', 'no-range']);
    expect(codes(law, 600)).toEqual(['two-trials', 'contested', 'no-range']);
  });

  test('off to one side in the track record, or not', () => {
    expect(codes(powerLawThrough(race, 1.04), 1500)).not.toContain('biased-record');
    expect(codes(powerLawThrough(race, 1.06), 1500)).toContain('biased-record');
  });
});
