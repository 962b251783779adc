import { fitCriticalSpeed, hundredths, type Trial } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearly, trials } from '../../generators.js';
import { isSound } from '../../sound.js';

const swims = (...list: readonly (readonly [number, number])[]): Trial[] =>
  list.map(([distance, time]) => ({ distance, time: hundredths(time) }));
const three = swims([200, 14_000], [400, 29_500], [800, 61_200]);
const codes = (list: Trial[]) => fitCriticalSpeed(list).cautions.map(({ code }) => code);

// Figures of larger fits are in tests/reference/critical-speed-worked.test.ts.
describe('fitCriticalSpeed', () => {
  test('two trials: the closed form, and nothing about how well it fits', () => {
    // 200 m more in 155 s; 200 m less 140 s at that speed. Worked by hand.
    const model = fitCriticalSpeed(swims([200, 14_000], [400, 29_500]));
    expect(model.speed).toBeCloseTo(200 / 155, 12);
    expect(model.reserve).toBeCloseTo(200 - 140 * (200 / 155), 10);
    expect(model.pace).toBe(7750);
    expect(model).toMatchObject({ standardErrors: null, intervals: null, rSquared: null });
    expect(model.validity).toEqual({ from: 12_000, to: 180_000 });
  });

  test('three trials: residuals in metres, one for each trial', () => {
    const { residuals, speed, reserve, trials: fitted } = fitCriticalSpeed(three);
    fitted.forEach(({ distance, time }, i) => {
      expect(residuals[i]).toBeCloseTo(distance - (reserve + (speed * time) / 100), 9);
    });
    expect(residuals.map((metres) => metres.toFixed(2))).toEqual(['-1.28', '1.90', '-0.62']);
  });

  test('three trials: standard errors, and intervals of 95 %', () => {
    // Worked with a statistics package; Student's t for one degree of freedom is 12.706.
    const { standardErrors, intervals } = fitCriticalSpeed(three);
    expect(standardErrors!.speed).toBeCloseTo(0.0069821050815, 12);
    expect(standardErrors!.reserve).toBeCloseTo(2.7962408315, 9);
    expect(intervals!.speed.low).toBeCloseTo(1.1810868216, 9);
    expect(intervals!.speed.high).toBeCloseTo(1.3585189349, 9);
    expect(intervals!.reserve.low).toBeCloseTo(-12.024, 3);
    expect(intervals!.reserve.high).toBeCloseTo(59.035, 3);
  });

  test('the order of the trials does not matter', () => {
    fc.assert(
      fc.property(trials, (list) => {
        expect(fitCriticalSpeed([...list].reverse())).toEqual(fitCriticalSpeed(list));
      }),
    );
  });

  test('swum twice as slowly, the speed halves and the reserve stays', () => {
    fc.assert(
      fc.property(trials, (list) => {
        const model = fitCriticalSpeed(list);
        const slow = list.map(({ distance, time }) => ({ distance, time: hundredths(2 * time) }));
        expect(fitCriticalSpeed(slow).speed * 2).toBeCloseTo(model.speed, 9);
        expect(fitCriticalSpeed(slow).reserve).toBeCloseTo(model.reserve, 6);
      }),
    );
  });

  test('trials that slow down always leave a reserve above zero', () => {
    fc.assert(
      fc.property(trials, (list) => {
        const { speed, reserve } = fitCriticalSpeed(list);
        expect(speed).toBeGreaterThan(0);
        expect(reserve).toBeGreaterThan(0);
      }),
    );
  });

  test('is plain data', () => {
    const model = fitCriticalSpeed(three);
    expect(JSON.parse(JSON.stringify(model))).toEqual(model);
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    fc.assert(fc.property(nearly(trials), (list) => isSound(() => fitCriticalSpeed(list))));
  });
});

describe('cautions', () => {
  test('the model is contested, always', () => {
    expect(codes(swims([400, 24_000], [800, 49_500], [1500, 95_000]))).toEqual(['contested']);
  });

  test('two trials', () => {
    expect(codes(swims([400, 24_000], [1500, 95_000]))).toContain('two-trials');
  });

  test.each([
    { shortest: 12_000, caution: false },
    { shortest: 11_999, caution: true },
  ])('a shortest trial of $shortest hundredths', ({ shortest, caution }) => {
    const list = swims([200, shortest], [400, 25_000], [1500, 100_000]);
    expect(codes(list).includes('trial-durations')).toBe(caution);
  });

  test.each([
    { longest: 54_000, caution: false },
    { longest: 53_999, caution: true },
  ])('from 4 minutes to $longest hundredths', ({ longest, caution }) => {
    const list = swims([400, 24_000], [800, longest]);
    expect(codes(list).includes('trial-durations')).toBe(caution);
  });

  test.each([
    // 1 m/s: the reserve is the distance less the seconds.
    { reserve: 4, caution: true },
    { reserve: 6, caution: false },
    { reserve: 49, caution: false },
    { reserve: 51, caution: true },
  ])('a reserve of $reserve m', ({ reserve, caution }) => {
    const list = swims([200, 100 * (200 - reserve)], [600, 100 * (600 - reserve)]);
    expect(codes(list).includes('reserve-unlikely')).toBe(caution);
  });
});
