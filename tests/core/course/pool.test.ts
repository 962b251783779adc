import { distanceAt, LCM, lengthsIn, type Pool, SCM, SCY } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceOf, poolOf, samePlace, snap } from '../../../packages/core/src/course/pool.js';
import { pool } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const THIRDS: Pool = { length: 100 / 3, unit: 'm' };
const count = fc.integer({ min: 1, max: 2_000 });

test('the three pools in common use', () => {
  expect([SCY, SCM, LCM]).toEqual([
    { length: 25, unit: 'yd' },
    { length: 25, unit: 'm' },
    { length: 50, unit: 'm' },
  ]);
  expect([SCY, SCM, LCM].every(Object.isFrozen)).toBe(true);
});

describe('distanceAt', () => {
  test.each([
    [SCY, 66, 1650],
    [LCM, 30, 1500],
    [THIRDS, 3, 100],
    [THIRDS, 15, 500],
    [THIRDS, 45, 1500],
    [SCM, 0, 0],
    [SCM, -0, 0],
  ])('%j: %d lengths are %d', (where, lengths, distance) => {
    expect(distanceAt(where, lengths)).toBe(distance);
  });

  test('a third of 100 is kept to a micrometre', () => {
    expect(distanceAt(THIRDS, 1)).toBe(33.333333);
  });

  test.each([-1, 1.5, Number.NaN, Infinity, 1_000_001, '2', null])('refuses %s lengths', (n) => {
    expect(refusal(() => distanceAt(SCM, n as number))).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^The number of lengths must be a whole number from 0/),
    });
  });
});

describe('lengthsIn', () => {
  test.each([
    [SCY, 1650, 66],
    [LCM, 1500, 30],
    [THIRDS, 500, 15],
    [THIRDS, 33.333333, 1],
    [THIRDS, 66.666667, 2],
    [SCM, 25, 1],
  ])('%j: %d are %d', (where, distance, lengths) => {
    expect(lengthsIn(where, distance)).toBe(lengths);
  });

  test('takes distanceAt back in any pool', () => {
    fc.assert(fc.property(pool, count, (where, n) => lengthsIn(where, distanceAt(where, n)) === n));
  });

  test.each([
    [SCY, 110, '110 yd is no whole number of lengths of a 25 yd pool; choose 100 or 125.'],
    [LCM, 25, '25 m is no whole number of lengths of a 50 m pool; choose 50.'],
    [LCM, 0.000001, '0.000001 m is no whole number of lengths of a 50 m pool; choose 50.'],
    [
      THIRDS,
      50,
      '50 m is no whole number of lengths of a 33.333333 m pool; choose 33.333333 or 66.666667.',
    ],
  ])('%j: %d ends between the walls', (where, distance, message) => {
    expect(refusal(() => lengthsIn(where, distance))).toMatchObject({
      code: 'not-whole-lengths',
      message,
      input: distance,
    });
  });

  test('both distances it offers are whole lengths', () => {
    fc.assert(
      fc.property(pool, fc.double({ min: 0.01, max: 5_000, noNaN: true }), (where, distance) => {
        let offered: readonly string[] = [];
        try {
          lengthsIn(where, distance);
        } catch (error) {
          offered = `${error}`.split('choose ')[1]?.match(/\d+(\.\d+)?/g) ?? ['none'];
        }
        for (const choice of offered) {
          expect(lengthsIn(where, Number(choice))).toBeGreaterThan(0);
          expect(Math.abs(Number(choice) - distance)).toBeLessThan(where.length);
        }
      }),
    );
  });

  test.each([0, -25, 1e10, Number.NaN, '100', null])('refuses a distance of %s', (distance) => {
    expect(refusal(() => lengthsIn(SCM, distance as number))).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^The distance must be a number above 0/),
    });
  });
});

describe.each([
  ['distanceAt', distanceAt],
  ['lengthsIn', lengthsIn],
])('%s refuses a pool', (_, call) => {
  test.each([
    [null, 'wrong-shape', 'The pool must be an object, not null.'],
    ['SCM', 'wrong-shape', 'The pool must be an object, not "SCM".'],
    [{ length: 25 }, 'unknown-choice', `The pool's unit must be one of "m", "yd", not undefined.`],
    [{ length: 25, unit: 'ft' }, 'unknown-choice', /"ft"/],
    [{ length: 0, unit: 'm' }, 'out-of-range', /^The pool's length must be a number at least 1/],
    [{ length: 10_001, unit: 'm' }, 'out-of-range', /at most 10000/],
    [{ length: '25', unit: 'm' }, 'out-of-range', /"25"/],
  ])('%j', (where, code, message) => {
    expect(refusal(() => call(where as Pool, 100))).toMatchObject({
      code,
      message: expect.stringMatching(message),
    });
  });
});

test('a pool is copied without what is not its own', () => {
  expect(poolOf({ length: 50, unit: 'm', name: 'Saltmarsh' })).toEqual(LCM);
});

describe('snap', () => {
  test.each([
    [33.3333333333, 33.333333],
    [66.6666666667, 66.666667],
    [500.00000000000006, 500],
    [1e-7, 0],
    [1e300, 1e300],
    [1e308, 1e308],
  ])('%d is %d', (distance, snapped) => {
    expect(snap(distance)).toBe(snapped);
  });
});

describe('samePlace', () => {
  test('two distances rounded by different roads are one place', () => {
    expect(samePlace(snap(200 / 3) / 2, snap(100 / 3))).toBe(true);
    expect(samePlace(snap(100 / 3) * 2, snap(200 / 3))).toBe(true);
  });

  test('two micrometres apart are two', () => {
    expect(samePlace(50, 50.000002)).toBe(false);
    expect(samePlace(50.000002, 50)).toBe(false);
  });
});

describe('distanceOf', () => {
  test('is snapped', () => {
    expect(distanceOf(100 / 3, 'It')).toBe(33.333333);
  });

  test.each([1e-7, 0, -1, 1e9 + 1, Number.NaN, Infinity, '1'])('refuses %s', (value) => {
    expect(codeOf(() => distanceOf(value, 'It'))).toBe('out-of-range');
  });
});
