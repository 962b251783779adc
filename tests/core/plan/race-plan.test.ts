import {
  convertDistance,
  distanceAt,
  halvesOf,
  hundredths,
  LCM,
  lapsOf,
  lengthsIn,
  planRace,
  type RaceOptions,
  type RaceShape,
  SCY,
  splitsFromLaps,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly, pool, swim, unevenSwim } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const sum = (times: readonly number[]) => times.reduce((total, time) => total + time, 0);

const profile = fc.oneof(swim, unevenSwim).map((swum) => ({ profile: swum }));
const secondHalf = fc
  .integer({ min: -750, max: 750 }) // a quarter of the shortest goal
  .map((d) => ({ secondHalf: hundredths(d) }));
const championship = fc.constantFrom<RaceShape>({ championship: 'W' }, { championship: 'M' });
const shape: fc.Arbitrary<RaceShape> = fc.oneof(
  fc.constant<RaceShape>('even'),
  secondHalf,
  championship,
);

/** A race of 2 to 66 lengths at a pace a person could swim. */
const race = (of: fc.Arbitrary<RaceShape>): fc.Arbitrary<RaceOptions> =>
  fc
    .record({
      pool,
      lengths: fc.integer({ min: 2, max: 66 }),
      laps: fc.integer({ min: 1, max: 70 }),
      pace: fc.integer({ min: 5000, max: 20_000 }),
      odd: fc.integer({ min: 0, max: 99 }),
      shape: of,
    })
    .map(({ pool: where, lengths, laps, pace, odd, shape: how }) => ({
      pool: where,
      distance: distanceAt(where, lengths),
      goal: hundredths(Math.round((lengths * where.length * pace) / 100) + 2000 + odd),
      shape: how,
      every: distanceAt(where, Math.min(laps, lengths)),
    }));

describe('planRace', () => {
  test('laps and marks add up to the goal, and the last mark is the finish', () => {
    fc.assert(
      fc.property(race(shape), (options) => {
        const plan = planRace(options);
        expect(sum(plan.laps)).toBe(options.goal);
        expect(plan.marks.at(-1)).toEqual({ distance: plan.distance, time: options.goal });
        expect(lapsOf(plan)).toEqual(plan.laps);
        expect(Math.min(...plan.laps)).toBeGreaterThan(0);
        if (plan.halves) expect(plan.halves.first + plan.halves.second).toBe(options.goal);
      }),
    );
  });

  test('marks stand at every stretch asked for, and at the finish', () => {
    fc.assert(
      fc.property(race(shape), (options) => {
        const { marks, distance } = planRace(options);
        const step = lengthsIn(options.pool, options.every!);
        const count = lengthsIn(options.pool, distance);
        const walls = Array.from({ length: Math.ceil(count / step) }, (_, i) =>
          distanceAt(options.pool, Math.min(count, (i + 1) * step)),
        );
        expect(marks.map((mark) => mark.distance)).toEqual(walls);
      }),
    );
  });

  test('the watch shows the same at a wall, however many marks are asked for', () => {
    fc.assert(
      fc.property(race(shape), (options) => {
        const sparse = planRace(options);
        const full = planRace({ ...options, every: options.pool.length });
        for (const mark of sparse.marks) expect(full.marks).toContainEqual(mark);
        expect(sparse.halves).toEqual(full.halves);
        expect(sparse.checkpoints).toEqual(full.checkpoints);
      }),
    );
  });

  test('even: each mark is the exact fraction of the goal, rounded once', () => {
    fc.assert(
      fc.property(race(fc.constant('even')), (options) => {
        const { marks, distance } = planRace(options);
        const count = BigInt(lengthsIn(options.pool, distance));
        for (const mark of marks) {
          const lengths = BigInt(lengthsIn(options.pool, mark.distance));
          // Half a hundredth upwards, in whole numbers only.
          const exact = (2n * BigInt(options.goal) * lengths + count) / (2n * count);
          expect(mark.time).toBe(Number(exact));
        }
      }),
    );
  });

  test('halves differ by exactly what was asked, or by the hundredth parity takes, which is said', () => {
    fc.assert(
      fc.property(race(secondHalf), (options) => {
        const asked = (options.shape as { secondHalf: number }).secondHalf;
        const plan = planRace({ ...options, every: options.pool.length });
        const odd = Math.abs(options.goal - asked) % 2;
        expect(plan.difference).toBe(asked - odd);
        expect(plan.halves!.second - plan.halves!.first).toBe(plan.difference);
        const codes = plan.cautions.map(({ code }) => code);
        expect(codes.includes('odd-hundredth')).toBe(odd === 1);
        expect(codes.includes('halves-interpolated')).toBe(plan.marks.length % 2 === 1);
      }),
    );
  });

  test('a tie in the middle length of an odd pool is a tie', () => {
    const plan = planRace({
      pool: { length: 100 / 3, unit: 'm' },
      distance: 566.666667,
      goal: hundredths(30_333),
      shape: { secondHalf: hundredths(0) },
    });
    expect(plan.halves).toEqual({ first: 15_167, second: 15_166, interpolated: true });
  });

  test('what reads halves of a swim reads the same in a plan with all its walls', () => {
    fc.assert(
      fc.property(race(shape), (options) => {
        // In a pool of 33⅓ the distances are rounded, and a reading may lose a tie.
        fc.pre(Number.isInteger(options.pool.length));
        const plan = planRace({ ...options, every: options.pool.length });
        expect(halvesOf(plan)).toEqual(plan.halves);
      }),
    );
  });

  test('each half of a split plan is even: no two of its lengths differ by more than a hundredth', () => {
    fc.assert(
      fc.property(race(secondHalf), (options) => {
        const { laps } = planRace({ ...options, every: options.pool.length });
        const half = Math.floor(laps.length / 2);
        for (const lengths of [laps.slice(0, half), laps.slice(-half)]) {
          expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test('a start credit and a finish lift change the first and the last length by just that', () => {
    fc.assert(
      fc.property(race(fc.constant('even')), fc.nat(150), fc.nat(100), (options, credit, lift) => {
        const count = lengthsIn(options.pool, options.distance);
        fc.pre(count > 2);
        const { laps } = planRace({
          ...options,
          every: options.pool.length,
          startCredit: hundredths(credit),
          finishLift: hundredths(lift),
        });
        const mean = (options.goal + credit + lift) / count;
        const off = (lap: number, by: number) => Math.abs(lap + by - mean);
        expect(off(laps[0]!, credit)).toBeLessThan(1);
        expect(off(laps.at(-1)!, lift)).toBeLessThan(1);
        for (const lap of laps.slice(1, -1)) expect(off(lap, 0)).toBeLessThan(1);
        expect(sum(laps)).toBe(options.goal);
      }),
    );
  });

  test('a swim’s own profile at its own time is the swim', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1000, max: 9000 }), { minLength: 1 }), (laps) => {
        const swum = splitsFromLaps(25, laps.map(hundredths));
        const goal = hundredths(sum(laps));
        const plan = planRace({
          pool: SCY,
          distance: 25 * laps.length,
          goal,
          shape: { profile: swum },
        });
        expect(plan.laps).toEqual(laps);
        expect(plan.cautions.filter(({ code }) => code === 'shape-borrowed')).toEqual([]);
      }),
    );
  });

  test('a profile of any swim adds up in any race it leaves time for', () => {
    fc.assert(
      fc.property(race(profile), (options) => {
        try {
          expect(sum(planRace(options).laps)).toBe(options.goal);
        } catch (error) {
          expect(error).toMatchObject({ code: 'out-of-range' });
        }
      }),
    );
  });

  test.each([
    [500, 20, 250],
    [1000, 40, 500],
    [1650, 66, 825],
  ])(
    '%d yd in a 25 yd pool: %d lengths, halfway at the wall of %d',
    (distance, lengths, halfway) => {
      const goal = hundredths(distance * 67);
      const plan = planRace({ pool: SCY, distance, goal, shape: { secondHalf: hundredths(-300) } });
      expect(plan.marks).toHaveLength(lengths);
      expect(plan.marks.find((mark) => mark.distance === halfway)?.time).toBe(plan.halves?.first);
      expect(plan.halves?.interpolated).toBe(false);
      expect(plan.difference).toBe(-300);
    },
  );

  test('1650 by 100 ends with a lap of 50', () => {
    const plan = planRace({
      pool: SCY,
      distance: 1650,
      goal: hundredths(110_000),
      shape: 'even',
      every: 100,
    });
    expect(plan.marks.at(-2)?.distance).toBe(1600);
    expect(plan.laps.at(-1)).toBe(3333);
    expect(plan.laps[0]).toBe(6667);
    expect(plan.halves).toEqual({ first: 55_000, second: 55_000, interpolated: false });
  });

  test('without `every` there is a mark at each wall', () => {
    const plan = planRace({ pool: LCM, distance: 400, goal: hundredths(25_000), shape: 'even' });
    expect(plan.laps).toHaveLength(8);
  });

  test('checkpoints are the walls nearest to the quarters', () => {
    const at = (distance: number, where = SCY) =>
      planRace({ pool: where, distance, goal: hundredths(70_000), shape: 'even' }).checkpoints.map(
        (mark) => mark.distance,
      );
    expect(at(500)).toEqual([125, 250, 375, 500]);
    expect(at(1650)).toEqual([400, 825, 1225, 1650]);
    expect(at(150, LCM)).toEqual([50, 100, 150]);
    expect(at(50, LCM)).toEqual([50]);
  });

  test('laps longer than the race leave the finish alone', () => {
    const options = { pool: LCM, distance: 400, goal: hundredths(25_000), every: 500 } as const;
    expect(planRace({ ...options, shape: 'even' }).marks).toEqual([
      { distance: 400, time: 25_000 },
    ]);
  });

  test('one length of an odd pool is a race too', () => {
    const third = { length: 100 / 3, unit: 'm' } as const;
    const plan = planRace({
      pool: third,
      distance: 100 / 3,
      goal: hundredths(2000),
      shape: 'even',
    });
    expect(plan.marks).toEqual([{ distance: 33.333333, time: 2000 }]);
  });

  test('a race of one length has no halves', () => {
    const plan = planRace({ pool: LCM, distance: 50, goal: hundredths(2500), shape: 'even' });
    expect(plan).toMatchObject({ halves: null, difference: null, cautions: [], laps: [2500] });
  });

  test('halfway in the middle of a length is said to be read off a line', () => {
    const options = { pool: LCM, distance: 150, goal: hundredths(9001), shape: 'even' } as const;
    const plan = planRace(options);
    expect(plan.halves).toEqual({ first: 4501, second: 4500, interpolated: true });
    expect(plan.cautions.map(({ code }) => code)).toEqual(['odd-hundredth', 'halves-interpolated']);
  });

  test('a championship shape follows the measured laps', () => {
    const laps = [9197, 9872];
    const goal = hundredths(90_000);
    const plan = planRace({ pool: LCM, distance: 1500, goal, shape: { championship: 'M' } });
    laps.forEach((share, i) => {
      expect(Math.abs(plan.laps[i]! - (goal * share) / 300_000)).toBeLessThan(1);
    });
    expect(plan.cautions.map(({ code }) => code)).toEqual(['shape-borrowed']);
  });

  test('the nearest championship distance is sought in metres', () => {
    // 310 yd are 283 m: nearer to 400 than to 200, if only just.
    expect(convertDistance(310, 'yd', 'm')).toBeGreaterThan(Math.sqrt(200 * 400));
    const plan = planRace({
      pool: { length: 31, unit: 'yd' },
      distance: 310,
      goal: hundredths(20_000),
      shape: { championship: 'W' },
    });
    expect(plan.cautions.at(-1)?.message).toContain('over 400 m');
  });

  const good: RaceOptions = { pool: LCM, distance: 400, goal: hundredths(25_000), shape: 'even' };
  test.each<[string, object, string]>([
    ['a distance between the walls', { distance: 420 }, 'not-whole-lengths'],
    ['laps that end between the walls', { every: 75 }, 'not-whole-lengths'],
    ['a race without end', { distance: 50 * 100_001 }, 'out-of-range'],
    ['no goal', { goal: 0 }, 'not-a-time'],
    ['a goal too short', { goal: 5 }, 'out-of-range'],
    ['a goal too long', { goal: 2 ** 53 - 1, startCredit: 1 }, 'too-large'],
    ['no shape', { shape: undefined }, 'unknown-choice'],
    ['a credit below zero', { startCredit: -1 }, 'out-of-range'],
    ['a lift below zero', { finishLift: -1 }, 'out-of-range'],
    ['a half’s own time for a difference', { shape: { secondHalf: 12_300 } }, 'out-of-range'],
    ['halves of one length', { distance: 50, shape: { secondHalf: 0 } }, 'halfway-not-bracketed'],
    ['a credit on a swum shape', { shape: { championship: 'W' }, startCredit: 1 }, 'wrong-shape'],
  ])('refuses %s', (_, wrong, code) => {
    expect(codeOf(() => planRace({ ...good, ...wrong }))).toBe(code);
  });

  test('takes the longest race a swim may have marks for', () => {
    const distance = 50 * 100_000;
    const plan = planRace({ ...good, distance, goal: hundredths(400_000_000), every: distance });
    expect(plan.laps).toEqual([400_000_000]);
  });

  test('answers anything with a plan or a PacingError', () => {
    const times = fc.oneof(fc.integer(), fc.maxSafeInteger()).map((n) => n as never);
    const options = fc.record({
      pool: nearly(pool),
      distance: nearly(fc.integer({ min: 1, max: 100 }).map((n) => n * 50)),
      goal: nearly(times),
      shape: nearly(fc.oneof(shape, profile, fc.record({ secondHalf: times }))),
      every: nearly(fc.constant(undefined)),
      startCredit: nearly(fc.oneof(fc.constant(undefined), times)),
      finishLift: nearly(fc.oneof(fc.constant(undefined), times)),
    });
    fc.assert(
      fc.property(fc.oneof(anything, options), (given) => isSound(() => planRace(given as never))),
      { numRuns: 1000 },
    );
  });
});
