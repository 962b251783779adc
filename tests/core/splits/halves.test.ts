import {
  compareHalves,
  type Halves,
  type Hundredths,
  halvesOf,
  hundredths,
  type Mark,
  type Splits,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, swim, unevenSwim } from '../../generators.js';
import { nearestOf } from '../../nearest-of.js';
import { codeOf, refusal } from '../../refusal.js';

const laps = (every: number, ...times: number[]) => splitsFromLaps(every, times.map(hundredths));
const marks = (...pairs: readonly (readonly [number, number])[]) =>
  splitsFromMarks(pairs.map(([distance, time]) => ({ distance, time: hundredths(time) })));
const cut = (first: number, second: number) => ({ first, second, interpolated: false }) as Halves;

describe('halvesOf', () => {
  test('a mark at halfway is the cut', () => {
    expect(halvesOf(laps(50, 2810, 3045, 3120, 3055))).toEqual({
      first: 5855,
      second: 6175,
      interpolated: false,
    });
  });

  test.each([
    [marks([100, 6000], [500, 32_000]), 15_750],
    [marks([1, 100], [3, 301], [4, 500]), 201],
    [marks([1, 100], [3, 300], [4, 500]), 200],
    [marks([40, 2500], [90, 5900], [110, 7000]), 3520],
  ])('else halfway is read off the line between its neighbours', (given, first) => {
    const halves = halvesOf(given);
    expect(halves).toMatchObject({ first, interpolated: true });
    expect(halves.first + halves.second).toBe(given.marks.at(-1)?.time);
  });

  test('both halves add up to the swim, exactly, and neither is empty', () => {
    fc.assert(
      fc.property(fc.oneof(swim, unevenSwim), (given) => {
        const { first, second } = halvesOf(given);
        expect(first + second).toBe(given.marks.at(-1)?.time);
        expect(Math.min(first, second)).toBeGreaterThan(0);
      }),
    );
  });

  test('the line is cut as whole-number fractions cut it, a tie away from zero', () => {
    fc.assert(
      fc.property(unevenSwim, (given) => {
        expect(halvesOf(given)).toEqual(byFractions(given));
      }),
    );
  });

  test('an even count of laps has a mark at halfway, in any pool; an odd count has none', () => {
    fc.assert(
      fc.property(swim, (given) => {
        expect(halvesOf(given).interpolated).toBe(given.marks.length % 2 === 1);
      }),
    );
  });

  test('the unit of distance does not matter', () => {
    fc.assert(
      fc.property(unevenSwim, fc.integer({ min: 2, max: 1000 }), (given, times) => {
        const scaled = given.marks.map(({ distance, time }) => ({
          distance: distance * times,
          time,
        }));
        expect(halvesOf(splitsFromMarks(scaled))).toEqual(halvesOf(given));
      }),
    );
  });

  test('a mark within the second half changes nothing', () => {
    const whole = marks([50, 3000], [100, 6200], [200, 12_800]);
    const finer = marks([50, 3000], [100, 6200], [150, 9500], [200, 12_800]);
    expect(halvesOf(finer)).toEqual(halvesOf(whole));
  });

  test.each([
    ['only its finish', marks([100, 6500])],
    ['marks past halfway only', marks([75, 4800], [100, 6500])],
  ])('a swim with %s has no half to read', (_, given) => {
    expect(refusal(() => halvesOf(given))).toMatchObject({
      code: 'halfway-not-bracketed',
      message: 'The swim has no mark at or before halfway; add one split from its first half.',
      input: given,
    });
  });

  test.each([null, [], {}, { marks: [{ distance: 1 }] }])('%j is no swim', (given) => {
    expect(['wrong-shape', 'not-a-time']).toContain(codeOf(() => halvesOf(given as never)));
  });
});

describe('compareHalves', () => {
  test.each([
    [3150, 3350, 0, 200, 'positive'],
    [3350, 3150, 0, -200, 'negative'],
    [3250, 3250, 0, 0, 'even'],
    [3249, 3250, 0, 1, 'positive'],
    [3230, 3270, 40, 40, 'even'],
    [3230, 3271, 40, 41, 'positive'],
    [3270, 3230, 40, -40, 'even'],
    [3271, 3230, 40, -41, 'negative'],
  ])('%d and %d within %d: %d, %s', (first, second, evenWithin, difference, verdict) => {
    const options = { evenWithin: hundredths(evenWithin) };
    expect(compareHalves(cut(first, second), options)).toEqual({
      difference,
      ratio: second / first,
      verdict,
    });
  });

  test('nothing but equal halves is even unless told otherwise', () => {
    expect(compareHalves(cut(3230, 3231))).toEqual(
      compareHalves(cut(3230, 3231), { evenWithin: hundredths(0) }),
    );
  });

  test('halves swapped give the mirror', () => {
    fc.assert(
      fc.property(lap, lap, fc.integer({ min: 0, max: 500 }), (a, b, within) => {
        const options = { evenWithin: hundredths(within) };
        const there = compareHalves(cut(a, b), options);
        const back = compareHalves(cut(b, a), options);
        expect(back.difference + there.difference).toBe(0);
        expect(back.ratio * there.ratio).toBeCloseTo(1, 12);
        expect(back.verdict).toBe(
          { negative: 'positive', even: 'even', positive: 'negative' }[there.verdict],
        );
      }),
    );
  });

  test.each([
    [cut(0, 1), {}, 'not-a-time', /^The first half must/],
    [cut(1, -1), {}, 'not-a-time', /^The second half must/],
    [cut(1, Number.NaN), {}, 'not-a-time', /^The second half must/],
    [null, {}, 'wrong-shape', /^The halves must be an object/],
    [cut(1, 1), null, 'wrong-shape', /^The options must be an object/],
    [cut(1, 1), { evenWithin: 0.5 }, 'not-a-time', /^The tolerance must/],
    [cut(1, 1), { evenWithin: -1 }, 'out-of-range', /^The tolerance must be zero or more\.$/],
  ])('refuses %j with %j', (halves, options, code, message) => {
    expect(refusal(() => compareHalves(halves as Halves, options as never))).toMatchObject({
      code,
      message: expect.stringMatching(message),
    });
  });
});

/** The same by whole numbers only: distances here are whole, so twice of them is no fraction either. */
function byFractions({ marks: given }: Splits): Halves {
  const finish = given.at(-1) as Mark;
  const at = given.find(({ distance }) => distance * 2 === finish.distance);
  if (at !== undefined) return halves(at.time, finish, false);
  const after = given.findIndex(({ distance }) => distance * 2 > finish.distance);
  const [left, right] = [given[after - 1] as Mark, given[after] as Mark];
  const over = BigInt(2 * (right.distance - left.distance));
  const run =
    BigInt(finish.distance - 2 * left.distance) * BigInt(right.time - left.time) +
    BigInt(left.time) * over;
  return halves(nearestOf(run, over), finish, true);
}

function halves(first: number, finish: Mark, interpolated: boolean): Halves {
  return {
    first: first as Hundredths,
    second: (finish.time - first) as Hundredths,
    interpolated,
  };
}
