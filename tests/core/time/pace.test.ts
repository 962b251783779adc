import { hundredths, pacePer, timeAtPace } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestOf } from '../../nearest-of.js';
import { codeOf, refusal } from '../../refusal.js';

const time = fc.integer({ min: 1, max: 3_600_000 }).map(hundredths);
const distance = fc.integer({ min: 1, max: 50_000 });

describe('pacePer', () => {
  test('is the time shared out, rounded once, by fractions of whole numbers too', () => {
    fc.assert(
      fc.property(time, distance, distance, (t, swum, per) => {
        expect(pacePer(t, swum, per)).toBe(nearestOf(BigInt(t) * BigInt(per), BigInt(swum)));
      }),
    );
  });

  test('is for 100 unless told otherwise', () => {
    fc.assert(fc.property(time, distance, (t, d) => pacePer(t, d) === pacePer(t, d, 100)));
  });

  test('does not depend on the unit of both distances', () => {
    fc.assert(
      fc.property(time, distance, distance, fc.integer({ min: 2, max: 9 }), (t, d, per, times) => {
        expect(pacePer(t, d * times, per * times)).toBe(pacePer(t, d, per));
      }),
    );
  });

  test.each([
    [1, 200, 100, 1],
    [3, 200, 100, 2],
    [1, 201, 100, 0],
  ])('%d over %d goes to a whole hundredth per %d: %d', (t, swum, per, pace) => {
    expect(pacePer(hundredths(t), swum, per)).toBe(pace);
  });
});

describe('timeAtPace', () => {
  test('is the pace multiplied, rounded once, by fractions of whole numbers too', () => {
    fc.assert(
      fc.property(time, distance, distance, (pace, toSwim, per) => {
        expect(timeAtPace(pace, toSwim, per)).toBe(
          nearestOf(BigInt(pace) * BigInt(toSwim), BigInt(per)),
        );
      }),
    );
  });

  test('is for 100 unless told otherwise', () => {
    fc.assert(fc.property(time, distance, (t, d) => timeAtPace(t, d) === timeAtPace(t, d, 100)));
  });

  test('lies within half a hundredth for each stretch of the time whose pace it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1_000, max: 3_600_000 }).map(hundredths), distance, (t, d) => {
        const pace = pacePer(t, d);
        fc.pre(pace > 0);
        expect(Math.abs(timeAtPace(pace, d) - t)).toBeLessThanOrEqual(d / 200 + 0.5);
      }),
    );
  });
});

describe.each([
  ['pacePer', pacePer],
  ['timeAtPace', timeAtPace],
])('%s refuses', (_, by) => {
  test.each([0, -1, Number.NaN, Infinity, '100', null])('a distance of %s', (d) => {
    expect(codeOf(() => by(hundredths(6700), d as number))).toBe('out-of-range');
    expect(codeOf(() => by(hundredths(6700), 100, d as number))).toBe('out-of-range');
  });

  test.each([0, -6700, 67.5, Number.NaN, '6700'])('a time of %s', (t) => {
    expect(refusal(() => by(t as never, 100))).toMatchObject({
      code: 'not-a-time',
      message: expect.stringMatching(by === pacePer ? /^The time must/ : /^The pace must/),
    });
  });

  test('what overflows', () => {
    const [swum, per] = by === pacePer ? [5e-324, 100] : [1e308, 5e-324];
    expect(codeOf(() => by(hundredths(6700), swum, per))).toBe('too-large');
  });

  test('with a sentence that names the field', () => {
    expect(refusal(() => by(hundredths(6700), 0)).message).toBe(
      'The distance must be a number above 0, not 0.',
    );
    expect(refusal(() => by(hundredths(6700), 100, -1)).message).toBe(
      'The stretch of the pace must be a number above 0, not −1.',
    );
  });
});
