import { hundredths, SCM, SCY, type SwumSet, splitsFromLaps, splitsFromMarks } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { backHalfEstimate } from '../../../packages/core/src/projection/back-half.js';
import { refusal } from '../../refusal.js';

const rep = (...laps: number[]) => splitsFromLaps(50, laps.map(hundredths));
const classic: SwumSet = {
  pool: SCM,
  repDistance: 100,
  reps: Array(20).fill(rep(3150, 3350)),
  sendOff: hundredths(9000),
};
const unmarked = splitsFromMarks([{ distance: 100, time: hundredths(6400) }]);
const codes = (set: SwumSet, distance: number) =>
  backHalfEstimate(set, distance, []).cautions.map(({ code }) => code);

test('a race takes twice the second half, as often as it goes into the race', () => {
  expect(backHalfEstimate(classic, 1500, [])).toMatchObject({
    time: 100_500,
    range: { low: 98_185, high: 102_815 },
    method: 'back-half',
  });
});

describe('the assumptions', () => {
  test.each([
    [classic, 'Each 100 m of the race takes twice the mean second half of 20 timed reps.'],
    [
      { ...classic, pool: SCY, reps: [rep(3150, 3350)] },
      'Each 100 yd of the race takes twice the mean second half of 1 timed rep.',
    ],
    [
      { ...classic, reps: [unmarked, rep(3150, 3350), rep(3150, 3350)] },
      'Each 100 m of the race takes twice the mean second half of 2 timed reps.',
    ],
  ])('say what was doubled', (set, says) => {
    expect(backHalfEstimate(set, 1500, []).assumptions[0]).toBe(says);
  });

  test.each([
    [100, '574 published 200 m races was 2.21 s faster'],
    [300, '574 published 200 m races was 2.21 s faster'],
    [301, '392 published 400 m races was 2.48 s faster'],
    [800, '149 published 800 m races was 2.46 s faster'],
    [1650, '186 published 1500 m races was 2.63 s faster'],
    [10_000, '186 published 1500 m races was 2.63 s faster'],
  ])('over %d tell what a dive was worth, and that it is not in the figure', (distance, says) => {
    const [, dive] = backHalfEstimate(classic, distance, []).assumptions;
    expect(dive).toContain(says);
    expect(dive).toMatch(/^The dive is not in the figure\./);
    expect(dive).toMatch(/nothing of that was added\.$/);
  });
});

describe('the cautions', () => {
  test('that no study has tested the rule comes first, always', () => {
    expect(backHalfEstimate(classic, 1500, []).cautions).toEqual([
      {
        code: 'rule-untested',
        message:
          'Racing at twice the second half is common practice; no published study has tested it.',
      },
    ]);
  });

  test('those of the set follow', () => {
    const { sendOff: _, ...loose } = { ...classic, reps: classic.reps.slice(0, 3) };
    expect(codes(loose, 300)).toEqual(['rule-untested', 'few-reps', 'rest-unknown']);
  });

  test('a race longer than the set is told, one as long is not', () => {
    expect(codes(classic, 2000)).toEqual(['rule-untested']);
    expect(codes(classic, 2001)).toEqual(['rule-untested', 'race-longer-than-set']);
    expect(backHalfEstimate(classic, 5000, []).cautions[1]?.message).toBe(
      'The race is longer than the 2000 m swum in the set: endurance over the rest is assumed, not seen.',
    );
  });

  test('15 reps of 33⅓ are as long as a 500', () => {
    const thirds = splitsFromMarks(
      [50 / 3, 100 / 3].map((distance, i) => ({ distance, time: hundredths(1100 * (i + 1)) })),
    );
    const set = { ...classic, repDistance: 100 / 3, reps: Array(15).fill(thirds) };
    expect(codes(set, 500)).not.toContain('race-longer-than-set');
  });

  test('further ones come last', () => {
    const further = { code: 'course-differs', message: 'Another pool.' } as const;
    expect(backHalfEstimate(classic, 5000, [further]).cautions.at(-1)).toEqual(further);
  });
});

test('a set that nothing marks before halfway has no second half to read', () => {
  expect(refusal(() => backHalfEstimate({ ...classic, reps: [unmarked] }, 1500, []))).toMatchObject(
    {
      code: 'halfway-not-bracketed',
      message:
        'No rep has a mark at or before halfway, so there is no second half to read; time the halves.',
    },
  );
});
