import { fitPowerLaw, hundredths, powerLawThrough, type Trial } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearly, trials } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const swims = (...list: readonly (readonly [number, number])[]): Trial[] =>
  list.map(([distance, time]) => ({ distance, time: hundredths(time) }));
const codes = ({ cautions }: ReturnType<typeof fitPowerLaw>) => cautions.map(({ code }) => code);
const possible = trials.filter((list) => {
  const [first, last] = [list[0]!, list.at(-1)!];
  return last.time / first.time < (last.distance / first.distance) ** 1.5;
});

// Figures of larger fits are in tests/reference/power-law-worked.test.ts.
describe('fitPowerLaw', () => {
  test('two races: twice the distance in 2.1 times the time is an exponent of log₂ 2.1', () => {
    const law = fitPowerLaw(swims([400, 24_000], [800, 50_400]));
    expect(law.exponent).toBeCloseTo(Math.log2(2.1), 12);
    expect(law.factor * 400 ** law.exponent).toBeCloseTo(240, 9);
    expect(law.referenceDistance).toBeCloseTo(Math.sqrt(400 * 800), 9);
    expect(law).toMatchObject({ standardError: null, interval: null, rSquared: null });
    expect(codes(law)).toEqual(['two-trials', 'contested']);
  });

  test('three races: residuals are ratios less one, against the law', () => {
    const law = fitPowerLaw(swims([400, 24_000], [800, 49_400], [1500, 94_800]));
    law.results.forEach(({ distance, time }, i) => {
      const fitted = 100 * law.factor * distance ** law.exponent;
      expect(law.residuals[i]).toBeCloseTo(time / fitted - 1, 9);
    });
    expect(law.interval!.low).toBeLessThan(law.exponent);
    expect(law.rSquared).toBeGreaterThan(0.999);
    expect(codes(law)).toEqual(['contested']);
  });

  test('neither the order of the races nor the unit of time matters to the exponent', () => {
    fc.assert(
      fc.property(possible, (list) => {
        const { exponent } = fitPowerLaw(list);
        const slow = list.map(({ distance, time }) => ({ distance, time: hundredths(3 * time) }));
        expect(fitPowerLaw([...slow].reverse()).exponent).toBeCloseTo(exponent, 9);
      }),
    );
  });

  test('races that slow down have an exponent above one', () => {
    fc.assert(fc.property(possible, (list) => fitPowerLaw(list).exponent > 1));
  });

  test('refuses an exponent above 2, which no swimmer has', () => {
    expect(() => fitPowerLaw(swims([400, 24_000], [800, 96_000]))).not.toThrow();
    const impossible = swims([400, 24_000], [800, 96_100], [801, 120_000]);
    expect(codeOf(() => fitPowerLaw(impossible))).toBe('trials-contradict');
    expect(() => fitPowerLaw(swims([400, 24_000], [800, 120_000]))).toThrow(
      "The times give an exponent of 2.3, and a swimmer's is between 1 and 2; check them for a slip.",
    );
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    fc.assert(fc.property(nearly(trials), (list) => isSound(() => fitPowerLaw(list))));
  });
});

describe('powerLawThrough', () => {
  const race = { distance: 400, time: hundredths(24_000) };

  test('goes through the race with the exponent given, and says that it was given', () => {
    const law = powerLawThrough(race, 1.04);
    expect(law).toMatchObject({
      results: [race],
      exponent: 1.04,
      referenceDistance: 400,
      residuals: [0],
      standardError: null,
      interval: null,
      rSquared: null,
    });
    expect(law.factor).toBeCloseTo(240 / 400 ** 1.04, 12);
    expect(codes(law)).toEqual(['exponent-given', 'contested']);
  });

  test.each([0.999, 2.001, 0, -1, Number.NaN, undefined, '1.04'])(
    'refuses the exponent %s',
    (k) => {
      expect(codeOf(() => powerLawThrough(race, k as number))).toBe('out-of-range');
    },
  );

  test.each([1, 2])('takes the exponent %d', (k) => {
    expect(powerLawThrough(race, k).exponent).toBe(k);
  });

  test('refuses what is no race', () => {
    expect(codeOf(() => powerLawThrough(null as never, 1.04))).toBe('wrong-shape');
    expect(codeOf(() => powerLawThrough({ ...race, distance: 0 }, 1.04))).toBe('out-of-range');
    expect(codeOf(() => powerLawThrough({ ...race, time: hundredths(-1) }, 1.04))).toBe(
      'not-a-time',
    );
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    const one = trials.map(([first]) => first!);
    const k = fc.double({ min: 0.5, max: 2.5 });
    fc.assert(
      fc.property(nearly(one), nearly(k), (given, exponent) =>
        isSound(() => powerLawThrough(given, exponent)),
      ),
    );
  });
});
