import {
  compareHalves,
  halvesOf,
  hundredths,
  type Pool,
  readSet,
  SCM,
  type SwumSet,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { swumSet } from '../../generators.js';
import { nearestOf } from '../../nearest-of.js';
import { codeOf, refusal } from '../../refusal.js';

const rep = (...laps: number[]) => splitsFromLaps(50, laps.map(hundredths));
const unmarked = splitsFromMarks([{ distance: 100, time: hundredths(6400) }]);
const setOf = (reps: SwumSet['reps'], more: Partial<SwumSet> = {}): SwumSet => ({
  pool: SCM,
  repDistance: 100,
  reps,
  ...more,
});
const timesOf = (set: SwumSet) => set.reps.map(({ marks }) => marks.at(-1)!.time);

test('a set of three, every figure', () => {
  const set = setOf([rep(3100, 3300), rep(3150, 3350), rep(3200, 3460)], {
    sendOff: hundredths(9000),
  });
  expect(readSet(set)).toMatchObject({
    reps: [
      {
        time: 6400,
        halves: { first: 3100, second: 3300, interpolated: false },
        comparison: { difference: 200, ratio: 3300 / 3100, verdict: 'positive' },
        rest: 2600,
      },
      { time: 6500, rest: 2500 },
      { time: 6660, rest: 2340 },
    ],
    average: 6520,
    best: 6400,
    slowest: 6660,
    spread: Math.sqrt((120 ** 2 + 20 ** 2 + 140 ** 2) / 2),
    fade: 260,
    halves: { first: 3150, second: 3370, interpolated: false },
    comparison: { difference: 220, ratio: 3370 / 3150, verdict: 'positive' },
    evenWithin: 49,
    repPace: 6520,
    honestPace: 6740,
    optimism: 220,
    rest: 2480,
  });
});

test('the classic: 31.5 out and 33.5 back is 1:07 a hundred, not 1:05', () => {
  const set = setOf(Array(20).fill(rep(3150, 3350)), { rest: hundredths(2500) });
  expect(readSet(set)).toMatchObject({
    repPace: 6500,
    honestPace: 6700,
    optimism: 200,
    spread: 0,
    fade: 0,
    rest: 2500,
    cautions: [],
  });
});

test('figures of the whole reps agree with another library', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const reading = readSet(set);
      const times = timesOf(set);
      expect(reading.average).toBe(Math.round(mean(times))); // a whole sum: a tie stays a tie
      expect(reading.best).toBe(Math.min(...times));
      expect(reading.slowest).toBe(Math.max(...times));
      const spread = times.length > 1 ? sampleStandardDeviation(times) : 0;
      expect(reading.spread).toBeCloseTo(spread, 6);
      const sum = times.reduce((a, b) => a + BigInt(b), 0n);
      expect(reading.repPace).toBe(nearestOf(sum * 100n, BigInt(times.length * set.repDistance)));
    }),
  );
});

test('each rep is read by its own halves', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const reading = readSet(set);
      const { evenWithin } = reading;
      expect(reading.reps.map(({ halves }) => halves)).toEqual(set.reps.map(halvesOf));
      expect(reading.reps.map(({ comparison }) => comparison)).toEqual(
        set.reps.map((swim) => compareHalves(halvesOf(swim), { evenWithin })),
      );
    }),
  );
});

test('optimism is honest pace less rep pace, above zero where the halves are positive', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const { optimism, honestPace, repPace } = readSet(set);
      expect(optimism).toBe(honestPace! - repPace);
    }),
  );
});

test('reps in another order change the fade, and nothing else', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const { reps, fade, spread, cautions, ...there } = readSet(set);
      const back = readSet({ ...set, reps: [...set.reps].reverse() });
      expect(back).toMatchObject(there);
      expect(back.spread).toBeCloseTo(spread, 6);
      expect(back.fade + fade).toBe(0);
    }),
  );
});

test('a set twice as slow has twice the pace, within the rounding', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const reps = set.reps.map(({ marks }) =>
        splitsFromMarks(
          marks.map(({ distance, time }) => ({ distance, time: hundredths(2 * time) })),
        ),
      );
      const [once, twice] = [readSet(set), readSet({ ...set, reps })];
      expect(Math.abs(twice.repPace - 2 * once.repPace)).toBeLessThanOrEqual(1);
      expect(Math.abs(twice.honestPace! - 2 * once.honestPace!)).toBeLessThanOrEqual(
        2 + 200 / set.repDistance,
      );
    }),
  );
});

test('the pool does not change a figure', () => {
  const reps = [rep(3100, 3300), rep(3150, 3350)];
  const yards: Pool = { length: 20, unit: 'yd' };
  expect(readSet(setOf(reps, { pool: yards }))).toEqual(readSet(setOf(reps)));
});

describe('the fade', () => {
  test.each([
    [[6400], 0],
    [[6400, 6500], 100],
    [[6400, 6500, 6600], 200],
    [[6400, 6500, 6600, 6700, 6800], 400],
    [[6400, 6420, 6500, 6500, 6600, 6640], 210],
    [[6600, 6500, 6400], -200],
  ])('of %j is %d', (times, fade) => {
    const reps = times.map((time) => rep(3000, time - 3000));
    expect(readSet(setOf(reps)).fade).toBe(fade);
  });
});

describe('reps without a mark in their first half', () => {
  const reading = readSet(setOf([rep(3150, 3350), unmarked]));

  test('count for the whole reps, not for the halves', () => {
    expect(reading).toMatchObject({ average: 6450, halves: { first: 3150, second: 3350 } });
    expect(reading.reps[1]).toEqual({ time: 6400, halves: null, comparison: null, rest: null });
  });

  test('alone they leave nothing to say about halves', () => {
    expect(readSet(setOf([unmarked]))).toMatchObject({
      halves: null,
      comparison: null,
      honestPace: null,
      optimism: null,
      repPace: 6400,
    });
  });
});

describe('what still counts as even', () => {
  test('is 1.5 % of half the mean rep unless given', () => {
    expect(readSet(setOf([rep(3225, 3274)])).evenWithin).toBe(49);
    expect(readSet(setOf([rep(3225, 3274)])).comparison?.verdict).toBe('even');
    expect(readSet(setOf([rep(3225, 3275)])).comparison?.verdict).toBe('positive');
  });

  test('is what is given', () => {
    const reading = readSet(setOf([rep(3225, 3226)]), { evenWithin: hundredths(0) });
    expect(reading).toMatchObject({ evenWithin: 0, comparison: { verdict: 'positive' } });
  });

  test.each([
    [Number.NaN, 'not-a-time'],
    [null, 'not-a-time'],
    [-1, 'out-of-range'],
  ])('%s is refused, also where no rep has halves', (evenWithin, code) => {
    for (const only of [rep(3150, 3350), unmarked]) {
      const call = () => readSet(setOf([only]), { evenWithin: evenWithin as never });
      expect(codeOf(call)).toBe(code);
    }
  });

  test('options that are none are refused', () => {
    expect(codeOf(() => readSet(setOf([unmarked]), 5 as never))).toBe('wrong-shape');
  });
});

test('the cautions are those of the set', () => {
  const reading = readSet(setOf([rep(3000, 3100), rep(3200, 3500)], { sendOff: hundredths(6500) }));
  expect(reading.cautions.map(({ code }) => code)).toEqual([
    'few-reps',
    'missed-send-off',
    'reps-uneven',
    'fading',
  ]);
});

test('a reading is plain data', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const reading = readSet(set);
      expect(JSON.parse(JSON.stringify(reading))).toEqual(reading);
    }),
  );
});

test('an empty set is refused', () => {
  expect(refusal(() => readSet(setOf([])))).toMatchObject({ code: 'too-few-reps' });
});
