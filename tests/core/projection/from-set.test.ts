import {
  convertDistance,
  hundredths,
  LCM,
  pacePer,
  projectFromSet,
  readSet,
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
const classic: SwumSet = {
  pool: SCM,
  repDistance: 100,
  reps: Array(20).fill(rep(3150, 3350)),
  sendOff: hundredths(9000),
};
const distance = fc.integer({ min: 1, max: 60 }).map((lengths) => lengths * 25);
const codes = (race: Parameters<typeof projectFromSet>[1]) =>
  projectFromSet(classic, race).cautions.map(({ code }) => code);

test('the gap the library exists for: 30 s over 1500', () => {
  expect(projectFromSet(classic, { distance: 1500 })).toMatchObject({
    time: 100_500,
    pace: 6700,
    wholeReps: 97_500,
    optimism: 3000,
    method: 'back-half',
    cautions: [{ code: 'rule-untested' }],
  });
});

test('over the rep distance the estimate is what readSet calls honest', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      const race = projectFromSet(set, { distance: 100 });
      const { honestPace, repPace, optimism } = readSet(set);
      expect(race).toMatchObject({
        time: honestPace,
        pace: honestPace,
        wholeReps: repPace,
        optimism,
      });
    }),
  );
});

test('optimism is the estimate less the whole reps, and the pace is the estimate’s', () => {
  fc.assert(
    fc.property(swumSet, distance, (set, length) => {
      const { time, wholeReps, optimism, pace } = projectFromSet(set, { distance: length });
      expect(optimism).toBe(time - wholeReps);
      expect(pace).toBe(pacePer(time, length));
    }),
  );
});

test('a race twice as long takes twice the time, within the rounding', () => {
  fc.assert(
    fc.property(swumSet, distance, (set, length) => {
      const [once, twice] = [length, 2 * length].map((it) => projectFromSet(set, { distance: it }));
      expect(Math.abs(twice!.time - 2 * once!.time)).toBeLessThanOrEqual(1);
      expect(Math.abs(twice!.wholeReps - 2 * once!.wholeReps)).toBeLessThanOrEqual(1);
    }),
  );
});

test('the order of the reps does not matter', () => {
  fc.assert(
    fc.property(swumSet, distance, (set, length) => {
      const back = { ...set, reps: [...set.reps].reverse() };
      const { cautions: _, ...rest } = projectFromSet(set, { distance: length });
      expect(projectFromSet(back, { distance: length })).toMatchObject(rest);
    }),
  );
});

describe('a race in another pool', () => {
  test('of another unit is as long as it is, and its pace is per 100 of its own', () => {
    const race = projectFromSet(classic, { distance: 1650, pool: SCY });
    const metres = convertDistance(1650, 'yd', 'm');
    expect(race.time).toBe(Math.round(67 * metres));
    expect(race.wholeReps).toBe(Math.round(65 * metres));
    expect(race.pace).toBe(pacePer(race.time, 1650));
  });

  test('is told, the same pool is not', () => {
    expect(codes({ distance: 1500, pool: { ...SCM } })).toEqual(['rule-untested']);
    expect(codes({ distance: 1500, pool: LCM })).toEqual(['rule-untested', 'course-differs']);
    expect(codes({ distance: 1650, pool: SCY })).toEqual(['rule-untested', 'course-differs']);
    expect(projectFromSet(classic, { distance: 1500, pool: LCM }).cautions[1]?.message).toBe(
      'The race is in another pool than the set: turns and their push-offs are not allowed for.',
    );
  });

  test('counts in its own unit against what was swum', () => {
    expect(codes({ distance: 2100, pool: SCY })).not.toContain('race-longer-than-set');
    expect(codes({ distance: 2100, pool: SCM })).toContain('race-longer-than-set');
  });
});

describe('refuses', () => {
  test.each([0, -100, Number.NaN, 1e10, '1500', null, undefined])('a race of %s', (length) => {
    expect(refusal(() => projectFromSet(classic, { distance: length as number }))).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^The race distance must be a number above 0/),
    });
  });

  test.each([null, 1500, undefined])('%s for a race', (race) => {
    expect(refusal(() => projectFromSet(classic, race as never))).toMatchObject({
      code: 'wrong-shape',
      message: expect.stringMatching(/^The race must be an object/),
    });
  });

  test.each([
    [null, 'wrong-shape'],
    [{ length: 25, unit: 'ft' }, 'unknown-choice'],
  ])('the pool %j', (pool, code) => {
    const race = { distance: 1500, pool: pool as never };
    expect(refusal(() => projectFromSet(classic, race))).toMatchObject({
      code,
      message: expect.stringMatching(/^The race's pool/),
    });
  });

  test('a set without marks, or without reps', () => {
    const unmarked = splitsFromMarks([{ distance: 100, time: hundredths(6400) }]);
    const race = { distance: 1500 };
    expect(codeOf(() => projectFromSet({ ...classic, reps: [unmarked] }, race))).toBe(
      'halfway-not-bracketed',
    );
    expect(codeOf(() => projectFromSet({ ...classic, reps: [] }, race))).toBe('too-few-reps');
  });

  test('times too large to be exact', () => {
    const slow = { ...classic, reps: [rep(2 ** 51, 2 ** 51)] };
    expect(codeOf(() => projectFromSet(slow, { distance: 1e9 }))).toBe('too-large');
  });
});
