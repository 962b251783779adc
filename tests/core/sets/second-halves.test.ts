import { hundredths, SCM, type SwumSet, splitsFromLaps, splitsFromMarks } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  halvesOfReps,
  honestTime,
  markedHalves,
  meanHalves,
} from '../../../packages/core/src/sets/second-halves.js';
import { swumSet } from '../../generators.js';
import { nearestOf } from '../../nearest-of.js';

const rep = (...laps: number[]) => splitsFromLaps(50, laps.map(hundredths));
const unmarked = splitsFromMarks([{ distance: 100, time: hundredths(6500) }]);
const quarters = splitsFromLaps(25, [1500, 1650, 1700, 1650].map(hundredths));
const third = splitsFromMarks(
  [40, 100].map((distance) => ({ distance, time: hundredths(distance * 65) })),
);
const setOf = (...reps: SwumSet['reps']): SwumSet => ({ pool: SCM, repDistance: 100, reps });

test('each rep has its halves, or null where nothing marks the first', () => {
  expect(halvesOfReps(setOf(rep(3150, 3350), unmarked, quarters))).toEqual([
    { first: 3150, second: 3350, interpolated: false },
    null,
    { first: 3150, second: 3350, interpolated: false },
  ]);
});

test('marked halves leave out what is null', () => {
  expect(markedHalves(setOf(unmarked, rep(3100, 3300), unmarked))).toHaveLength(1);
  expect(markedHalves(setOf(unmarked))).toEqual([]);
});

describe('meanHalves', () => {
  test('rounds each mean once', () => {
    const halves = markedHalves(setOf(rep(3150, 3350), rep(3151, 3352)));
    expect(meanHalves(halves)).toEqual({ first: 3151, second: 3351, interpolated: false });
  });

  test('says where one was read off a line', () => {
    expect(meanHalves(markedHalves(setOf(rep(3150, 3350), third)))?.interpolated).toBe(true);
  });

  test('is null for none', () => {
    expect(meanHalves([])).toBeNull();
  });
});

describe('honestTime', () => {
  test('is twice the second half, for the rep distance itself', () => {
    const set = setOf(rep(3150, 3350));
    expect(honestTime(set, markedHalves(set), 100)).toBe(6700);
    expect(honestTime(set, markedHalves(set), 1500)).toBe(100_500);
  });

  test('counts only the reps that have halves', () => {
    const set = setOf(rep(3150, 3350), unmarked);
    expect(honestTime(set, markedHalves(set), 100)).toBe(6700);
  });

  test('is null for none', () => {
    expect(honestTime(setOf(unmarked), [], 100)).toBeNull();
  });

  test('is rounded once, from whole-number fractions', () => {
    fc.assert(
      fc.property(swumSet, fc.integer({ min: 1, max: 5000 }), (set, distance) => {
        const halves = markedHalves(set);
        const twice = halves.reduce((sum, { second }) => sum + 2n * BigInt(second), 0n);
        const swum = BigInt(halves.length * set.repDistance);
        expect(honestTime(set, halves, distance)).toBe(nearestOf(twice * BigInt(distance), swum));
      }),
    );
  });
});
