import { hundredths, splitsFromLaps, splitsFromMarks } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { lengthTimes } from '../../../packages/core/src/plan/length-times.js';
import { codeOf, refusal } from '../../refusal.js';

const none = { startCredit: 0, finishLift: 0 };
const even = { kind: 'even' } as const;
const halved = (secondHalf: number) =>
  ({ kind: 'halves', secondHalf: hundredths(secondHalf) }) as const;
const like = (every: number, ...laps: number[]) =>
  ({ kind: 'profile', swim: splitsFromLaps(every, laps.map(hundredths)) }) as const;
const goal = hundredths(24_000);

describe('even', () => {
  test('shares the goal out', () => {
    expect(lengthTimes(even, goal, 4, none)).toEqual([6000, 6000, 6000, 6000]);
  });

  test('dive and finish come off the first and the last length, and all slow down for it', () => {
    const edges = { startCredit: 200, finishLift: 80 };
    expect(lengthTimes(even, goal, 4, edges)).toEqual([5870, 6070, 6070, 5990]);
    expect(lengthTimes(even, goal, 1, edges)).toEqual([24_000]);
  });
});

describe('halves', () => {
  test('are each even in themselves', () => {
    expect(lengthTimes(halved(-400), goal, 4, none)).toEqual([6100, 6100, 5900, 5900]);
    expect(lengthTimes(halved(400), goal, 4, none)).toEqual([5900, 5900, 6100, 6100]);
  });

  test('differ as asked on the watch, dive and finish included', () => {
    const edges = { startCredit: 200, finishLift: 80 };
    expect(lengthTimes(halved(-400), goal, 4, edges)).toEqual([6000, 6200, 5940, 5860]);
  });

  test('of an odd number of lengths meet in the middle one, at the mean pace', () => {
    expect(lengthTimes(halved(-400), hundredths(30_000), 5, none)).toEqual([
      6100, 6100, 6000, 5900, 5900,
    ]);
    // The middle length gives way by a hundredth, so that the others are whole.
    expect(lengthTimes(halved(-1), hundredths(30_000), 3, none)).toEqual([10_000, 10_001, 9999]);
  });

  test('differ by a quarter of the goal at most', () => {
    expect(lengthTimes(halved(6000), goal, 4, none)).toEqual([4500, 4500, 7500, 7500]);
    for (const more of [6001, -6001, 12_000]) {
      expect(codeOf(() => lengthTimes(halved(more), goal, 4, none))).toBe('out-of-range');
    }
  });

  test('need a wall between them', () => {
    expect(codeOf(() => lengthTimes(halved(-400), goal, 1, none))).toBe('halfway-not-bracketed');
  });
});

describe('profile', () => {
  test('gives back the swim it was taken from', () => {
    expect(lengthTimes(like(50, 2810, 3045, 3120, 3055), hundredths(12_030), 4, none)).toEqual([
      2810, 3045, 3120, 3055,
    ]);
  });

  test('scales with the goal', () => {
    expect(lengthTimes(like(50, 2000, 3000), hundredths(10_000), 2, none)).toEqual([4000, 6000]);
  });

  test('reads lengths between two marks off a straight line', () => {
    expect(lengthTimes(like(100, 4000, 6000), hundredths(10_000), 4, none)).toEqual([
      2000, 2000, 3000, 3000,
    ]);
    expect(lengthTimes(like(50, 2000, 3000, 3000), hundredths(8000), 2, none)).toEqual([
      3500, 4500,
    ]);
  });

  test('reads uneven marks too', () => {
    const swim = splitsFromMarks([
      { distance: 50, time: hundredths(2000) },
      { distance: 200, time: hundredths(11_000) },
    ]);
    const shape = { kind: 'profile', swim } as const;
    expect(lengthTimes(shape, hundredths(11_000), 4, none)).toEqual([2000, 3000, 3000, 3000]);
  });

  test('has its own dive and finish', () => {
    const credit = { startCredit: 200, finishLift: 0 };
    const lift = { startCredit: 0, finishLift: 80 };
    expect(codeOf(() => lengthTimes(like(50, 2000, 3000), goal, 2, credit))).toBe('wrong-shape');
    expect(codeOf(() => lengthTimes(like(50, 2000, 3000), goal, 2, lift))).toBe('wrong-shape');
  });
});

test.each([
  ['a goal too short for its lengths', even, 3, none],
  ['a dive worth a whole length', even, 24_000, { startCredit: 10_000, finishLift: 0 }],
  ['a finish worth a whole length', even, 24_000, { startCredit: 0, finishLift: 10_000 }],
  ['a dive worth the first half', halved(0), 24_000, { startCredit: 12_000, finishLift: 0 }],
])('refuses %s', (_, shape, time, edges) => {
  const error = refusal(() => lengthTimes(shape, hundredths(time), 4, edges));
  expect(error.code).toBe('out-of-range');
  expect(error.message).toMatch(/leaves no time for length \d of 4/);
});
