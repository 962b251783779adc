import {
  convertDistance,
  hundredths,
  LCM,
  projectBrokenSwim,
  projectFromSet,
  SCM,
  SCY,
  type SwumSet,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { swumSet } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const rep = (...laps: number[]) => splitsFromLaps(50, laps.map(hundredths));
const broken: SwumSet = {
  pool: SCM,
  repDistance: 100,
  reps: Array(4).fill(rep(2900, 3100)),
  rest: hundredths(1000),
};

test('a broken 400: what was swum, and twice its second halves', () => {
  expect(projectBrokenSwim(broken)).toMatchObject({
    distance: 400,
    swum: 24_000,
    backHalf: { time: 24_800, method: 'back-half' },
    optimism: 800,
  });
});

test('the broken time is all pieces added, exactly, whatever the race', () => {
  fc.assert(
    fc.property(swumSet, fc.integer({ min: 1, max: 3000 }), (set, distance) => {
      const times = set.reps.map(({ marks }) => marks.at(-1)!.time as number);
      expect(projectBrokenSwim(set, { distance }).swum).toBe(times.reduce((a, b) => a + b));
    }),
  );
});

test('the back half is that of the same set read for the same race', () => {
  fc.assert(
    fc.property(swumSet, fc.integer({ min: 1, max: 3000 }), (set, distance) => {
      const { backHalf, optimism } = projectBrokenSwim(set, { distance });
      const race = projectFromSet(set, { distance });
      expect(backHalf).toEqual({
        time: race.time,
        range: race.range,
        method: race.method,
        assumptions: race.assumptions,
        cautions: race.cautions,
      });
      expect(Math.abs(optimism - race.optimism)).toBeLessThanOrEqual(1);
    }),
  );
});

describe('a race in another pool', () => {
  test('of another unit is as long as it is', () => {
    const metres = convertDistance(500, 'yd', 'm');
    const { distance, backHalf, restAware, optimism } = projectBrokenSwim(broken, {
      distance: 500,
      pool: SCY,
    });
    expect(distance).toBe(500);
    expect(backHalf.time).toBe(Math.round(62 * metres));
    expect(restAware?.time).toBe(projectBrokenSwim(broken, { distance: metres }).restAware?.time);
    expect(optimism).toBe(Math.round(2 * metres));
  });

  test('is told by every estimate, the same pool by none', () => {
    const told = (pool: SwumSet['pool']) => {
      const { backHalf, restAware } = projectBrokenSwim(broken, { distance: 400, pool });
      return [backHalf, restAware!].map(({ cautions }) =>
        cautions.some(({ code }) => code === 'course-differs'),
      );
    };
    expect(told(LCM)).toEqual([true, true]);
    expect(told({ ...SCM })).toEqual([false, false]);
  });

  test('that is none is refused', () => {
    const pool = { length: 0, unit: 'm' } as const;
    expect(refusal(() => projectBrokenSwim(broken, { distance: 400, pool })).message).toMatch(
      /^The race's pool/,
    );
  });
});

test('the race is as long as all pieces unless given', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const distance = set.reps.length * set.repDistance;
      expect(projectBrokenSwim(set)).toEqual(projectBrokenSwim(set, { distance }));
    }),
  );
});

test('scaled to a race half as long, the optimism is half', () => {
  expect(projectBrokenSwim(broken, { distance: 200 })).toMatchObject({
    distance: 200,
    swum: 24_000,
    backHalf: { time: 12_400 },
    optimism: 400,
  });
});

test('15 pieces of 33⅓ are a 500', () => {
  const piece = splitsFromMarks(
    [50 / 3, 100 / 3].map((distance, i) => ({ distance, time: hundredths(1100 * (i + 1)) })),
  );
  const set = { pool: SCM, repDistance: 100 / 3, reps: Array(15).fill(piece) };
  expect(projectBrokenSwim(set).distance).toBe(500);
});

describe('refuses', () => {
  test.each([0, -400, Number.NaN, '400', null])('a race of %s', (distance) => {
    expect(
      refusal(() => projectBrokenSwim(broken, { distance: distance as number })),
    ).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^The race distance must be a number above 0/),
    });
  });

  test.each([null, 400, 'x'])('%j for a race', (race) => {
    expect(refusal(() => projectBrokenSwim(broken, race as never))).toMatchObject({
      code: 'wrong-shape',
      message: expect.stringMatching(/^The race must be an object/),
    });
  });

  test('pieces that nothing marks before halfway', () => {
    const unmarked = splitsFromMarks([{ distance: 100, time: hundredths(6400) }]);
    expect(codeOf(() => projectBrokenSwim({ ...broken, reps: [unmarked] }))).toBe(
      'halfway-not-bracketed',
    );
  });

  test('pieces that add up to more than is exact', () => {
    const slow = rep(2 ** 51, 2 ** 51);
    expect(codeOf(() => projectBrokenSwim({ ...broken, reps: [slow, slow, slow] }))).toBe(
      'too-large',
    );
  });
});
