import {
  hundredths,
  judgePlan,
  LCM,
  planRace,
  type Splits,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const plan = planRace({ pool: LCM, distance: 200, goal: hundredths(13_200), shape: 'even' });
const swam = (...laps: number[]): Splits => splitsFromLaps(50, laps.map(hundredths));
const laps = fc.array(fc.integer({ min: 2000, max: 9000 }).map(hundredths), {
  minLength: 4,
  maxLength: 4,
});

describe('judgePlan', () => {
  test('compares mark by mark, lap by lap and half by half', () => {
    expect(judgePlan(plan, swam(3150, 3310, 3390, 3400))).toEqual({
      rows: [
        { distance: 50, planned: 3300, swum: 3150, difference: -150, lost: -150, ofShape: -163 },
        { distance: 100, planned: 6600, swum: 6460, difference: -140, lost: 10, ofShape: -165 },
        { distance: 150, planned: 9900, swum: 9850, difference: -50, lost: 90, ofShape: -88 },
        { distance: 200, planned: 13_200, swum: 13_250, difference: 50, lost: 100, ofShape: 0 },
      ],
      difference: 50,
      firstHalf: -140,
      secondHalf: 190,
    });
  });

  test('what was lost lap by lap is what was lost in all, and so are the halves', () => {
    fc.assert(
      fc.property(laps, (times) => {
        const judged = judgePlan(plan, splitsFromLaps(50, times));
        expect(judged.rows.reduce((total, row) => total + row.lost, 0)).toBe(judged.difference);
        expect(judged.firstHalf! + judged.secondHalf!).toBe(judged.difference);
      }),
    );
  });

  test('a plan swum as planned differs nowhere', () => {
    const judged = judgePlan(plan, plan);
    expect(judged.rows.map(({ difference }) => difference)).toEqual([0, 0, 0, 0]);
    expect(judged.rows.map(({ ofShape }) => ofShape)).toEqual([0, 0, 0, 0]);
  });

  test('a slower swim in the planned shape keeps the shape', () => {
    const judged = judgePlan(plan, swam(3600, 3600, 3600, 3600));
    expect(judged.difference).toBe(1200);
    expect(judged.rows.map(({ ofShape }) => ofShape)).toEqual([0, 0, 0, 0]);
  });

  test('only marks that both have are compared', () => {
    const judged = judgePlan(plan, splitsFromLaps(100, [6700, 6600].map(hundredths)));
    expect(judged.rows.map(({ distance }) => distance)).toEqual([100, 200]);
    expect(judged.rows[1]).toMatchObject({ difference: 100, lost: 0 });
  });

  test('a place reached by two roads is one place', () => {
    const third = { length: 100 / 3, unit: 'm' } as const;
    const goal = hundredths(40_000);
    const long = planRace({ pool: third, distance: 533.333333, goal, shape: 'even' });
    const swim = splitsFromLaps(266.6666665, [20_000, 20_100].map(hundredths));
    expect(judgePlan(long, swim).rows.map(({ difference }) => difference)).toEqual([0, 100]);
  });

  test('halves are unknown where the swim or the plan has none', () => {
    const finish = splitsFromMarks([{ distance: 200, time: hundredths(13_000) }]);
    expect(judgePlan(plan, finish)).toMatchObject({ firstHalf: null, secondHalf: null });
    expect(judgePlan({ ...plan, halves: null }, plan)).toMatchObject({ firstHalf: null });
  });

  test('refuses a swim that ends elsewhere', () => {
    expect(codeOf(() => judgePlan(plan, swam(3150, 3310, 3390)))).toBe('no-mark-there');
    expect(codeOf(() => judgePlan(plan, swam(3150, 3310, 3390, 3400, 3400)))).toBe('no-mark-there');
  });

  test('answers anything with a judgement or a PacingError', () => {
    const swims = fc.oneof(
      anything,
      laps.map((times) => splitsFromLaps(50, times)),
    );
    fc.assert(
      fc.property(nearly(fc.constant(plan)), swims, (given, swim) =>
        isSound(() => judgePlan(given, swim as never)),
      ),
    );
  });
});
