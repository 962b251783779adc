import {
  type CriticalSpeed,
  fitCriticalSpeed,
  hundredths,
  type Trial,
  timeFromCriticalSpeed,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly, trials } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const swims = (...list: readonly (readonly [number, number])[]): Trial[] =>
  list.map(([distance, time]) => ({ distance, time: hundredths(time) }));
const two = fitCriticalSpeed(swims([200, 11_900], [400, 25_000]));
const four = fitCriticalSpeed(swims([200, 11_298], [400, 23_646], [800, 48_479], [1500, 92_048]));
const codes = (model: CriticalSpeed, distance: number) =>
  timeFromCriticalSpeed(model, distance).cautions.map(({ code }) => code);

describe('timeFromCriticalSpeed', () => {
  test('the interval is all times whose prediction interval takes in the distance', () => {
    const { range, time } = timeFromCriticalSpeed(four, 1500);
    // 920.212, and 916.893 to 923.546 s: worked with a statistics package and a root finder.
    expect({ time, ...range }).toMatchObject({ time: 92_021, low: 91_689, high: 92_355 });
    expect(range?.covers).toBe('95 % prediction interval of the line through 4 swims');
  });

  test('two trials give back their own times, and no range where nobody has measured one', () => {
    fc.assert(
      fc.property(
        trials.filter(({ length }) => length === 2),
        (list) => {
          const model = fitCriticalSpeed(list);
          for (const { distance, time } of list) {
            expect(timeFromCriticalSpeed(model, distance)).toMatchObject({ time, range: null });
          }
        },
      ),
    );
  });

  test('the range holds the estimate', () => {
    fc.assert(
      fc.property(trials, fc.integer({ min: 1, max: 20_000 }), (list, distance) => {
        const model = fitCriticalSpeed(list);
        fc.pre(distance > model.reserve + 1);
        const { range, time } = timeFromCriticalSpeed(model, distance);
        if (range === null) return;
        expect(range.low).toBeLessThanOrEqual(time);
        expect(range.high).toBeGreaterThanOrEqual(time);
      }),
    );
  });

  test('longer takes longer', () => {
    fc.assert(
      fc.property(trials, fc.integer({ min: 1, max: 5000 }), (list, more) => {
        const model = fitCriticalSpeed(list);
        const at = (distance: number) => timeFromCriticalSpeed(model, distance).time;
        const longest = list.at(-1)!.distance;
        expect(at(longest + more)).toBeGreaterThan(at(longest));
      }),
    );
  });

  test('is the same for a model that went through JSON', () => {
    expect(timeFromCriticalSpeed(JSON.parse(JSON.stringify(four)), 1500)).toEqual(
      timeFromCriticalSpeed(four, 1500),
    );
  });

  test('200 and 400 to 1500 has the range of the track record, from the estimate on', () => {
    const { time, range, cautions } = timeFromCriticalSpeed(two, 1500);
    expect(range!.low).toBe(time); // it always promised too fast
    expect(range!.high).toBeGreaterThan(1.03 * time);
    expect(range!.covers).toMatch(
      /^90 % of swims like those of 16 men in .*Olympic Games, 2000–2016, elite, 50 m pool, and the estimate itself;/,
    );
    expect(cautions.find(({ code }) => code === 'biased-record')?.message).toBe(
      'For those swims the method was 3.0 % too fast on average.',
    );
  });

  test('names its method and what it takes for granted', () => {
    const { method, assumptions } = timeFromCriticalSpeed(four, 1500);
    expect(method).toBe('critical-speed');
    expect(assumptions).toEqual([
      'Pace settles: past a reserve of 19.0 m, every metre is swum at 1.609 m/s.',
      'Every swim was flat out, alike in pool, stroke and start.',
    ]);
  });

  test('the smallest distance beyond the reserve that takes a hundredth', () => {
    expect(codeOf(() => timeFromCriticalSpeed(two, two.reserve - 0.00001))).toBe('out-of-range');
    expect(codeOf(() => timeFromCriticalSpeed(two, two.reserve + 0.001))).toBe('not-a-time');
    expect(timeFromCriticalSpeed(two, two.reserve + 0.02).time).toBe(1);
  });

  test.each([0, -1, 0.5, 1e6 + 1, Number.NaN, Infinity, '1500', null])(
    'refuses %s m',
    (distance) => {
      expect(codeOf(() => timeFromCriticalSpeed(four, distance as number))).toBe('out-of-range');
    },
  );

  test('refuses a time that is too large to be exact', () => {
    const slow = fitCriticalSpeed(swims([1, 1], [1.01, 1e9]));
    expect(codeOf(() => timeFromCriticalSpeed(slow, 1e6))).toBe('too-large');
  });

  test('refuses a model without its trials', () => {
    expect(codeOf(() => timeFromCriticalSpeed({ speed: 1.3 } as CriticalSpeed, 1500))).toBe(
      'wrong-shape',
    );
    expect(codeOf(() => timeFromCriticalSpeed(null as never, 1500))).toBe('wrong-shape');
  });

  test('whatever goes in, no NaN and no foreign error comes out', () => {
    const model = fc.oneof(trials.map(fitCriticalSpeed), fc.record({ trials: anything }));
    const distance = fc.oneof(
      fc.integer({ min: 1, max: 1e6 }),
      fc.double({ min: 1, max: 1e6, noNaN: true }),
    );
    fc.assert(
      fc.property(nearly(model), nearly(distance), (given, metres) =>
        isSound(() => timeFromCriticalSpeed(given as CriticalSpeed, metres)),
      ),
    );
  });
});

describe('cautions', () => {
  test.each([
    { distance: 199, caution: true },
    { distance: 200, caution: false },
    { distance: 1500, caution: false },
    { distance: 1501, caution: true },
  ])('$distance m against trials of 200 to 1500', ({ distance, caution }) => {
    expect(codes(four, distance).includes('extrapolated')).toBe(caution);
  });

  test.each([
    { distance: 150, caution: true },
    { distance: 400, caution: false },
    { distance: 2900, caution: false },
    { distance: 2950, caution: true },
  ])('$distance m against 2 to 30 minutes', ({ distance, caution }) => {
    expect(codes(four, distance).includes('outside-validity')).toBe(caution);
  });

  test.each([
    { last: 92_500, share: 1.1, caution: true },
    { last: 92_800, share: 1.6, caution: false },
  ])('a range of ±$share %, where races vary by ±1.3 %', ({ last, share, caution }) => {
    const model = fitCriticalSpeed(
      swims([200, 11_298], [400, 23_646], [800, 48_479], [1500, last]),
    );
    const { range } = timeFromCriticalSpeed(model, 1500);
    const { low, high } = range!;
    expect((100 * (high - low)) / (high + low)).toBeCloseTo(share, 1);
    expect(codes(model, 1500).includes('narrow-range')).toBe(caution);
  });

  test('three trials are enough for an interval, and it is wide', () => {
    const three = fitCriticalSpeed(swims([200, 14_000], [400, 29_500], [800, 61_200]));
    // 1103.351 to 1230.181 s: worked with a statistics package and a root finder.
    expect(timeFromCriticalSpeed(three, 1500).range).toEqual({
      low: 110_335,
      high: 123_018,
      covers: '95 % prediction interval of the line through 3 swims',
    });
  });

  test('no range: two trials that the track record does not know', () => {
    const other = fitCriticalSpeed(swims([400, 25_000], [800, 51_500]));
    expect(codes(other, 1500)).toContain('no-range');
    expect(codes(two, 1500)).not.toContain('no-range');
  });

  test('no range: three trials so loose that the speed may as well be zero', () => {
    const loose = fitCriticalSpeed(swims([100, 1000], [399, 4001], [400, 1_000_000]));
    expect(timeFromCriticalSpeed(loose, 300).range).toBeNull();
    expect(codes(loose, 300)).toContain('no-range');
  });
});
