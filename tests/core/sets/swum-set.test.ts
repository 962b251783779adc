import { hundredths, SCM, type SwumSet, splitsFromLaps } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { restAfter, setOf } from '../../../packages/core/src/sets/swum-set.js';
import { swumSet } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
const set: SwumSet = { pool: SCM, repDistance: 100, reps: [rep, rep] };

test('a set comes back from JSON as it was', () => {
  fc.assert(
    fc.property(swumSet, (given) => {
      const { pool, repDistance, ...rest } = given;
      const read = setOf(JSON.parse(JSON.stringify(given)));
      expect(read).toMatchObject(rest);
      expect(read.pool).toEqual(pool);
      expect(read.repDistance).toBeCloseTo(repDistance, 5);
    }),
  );
});

test('neither send-off nor rest need be known, and what is not a set’s is left out', () => {
  expect(setOf({ ...set, coach: 'Oona Price', rest: undefined })).toEqual(set);
});

test('a rest may be none at all', () => {
  expect(setOf({ ...set, rest: 0 })).toEqual({ ...set, rest: 0 });
});

test('reps of 33⅓ end where they should, however they were added up', () => {
  const thirds = splitsFromLaps(100 / 3, [2100, 2200].map(hundredths));
  expect(setOf({ ...set, repDistance: 66.666666, reps: [thirds] }).reps).toEqual([thirds]);
});

describe('refuses', () => {
  test.each([
    [null, 'wrong-shape', /^The set must be an object, not null\.$/],
    [[rep], 'wrong-shape', /^The set must be an object, not a list\.$/],
    [{ ...set, pool: 25 }, 'wrong-shape', /^The pool must be/],
    [{ ...set, pool: { length: 25, unit: 'ft' } }, 'unknown-choice', /^The pool's unit must be/],
    [{ ...set, repDistance: 0 }, 'out-of-range', /^The rep distance must be a number above 0/],
    [{ ...set, reps: rep }, 'wrong-shape', /^The reps must be a list/],
    [{ ...set, reps: [] }, 'too-few-reps', /^The set has no rep; add at least one\.$/],
    [{ ...set, reps: [rep, null] }, 'wrong-shape', /^Rep 2 must be an object, not null\.$/],
    [{ ...set, reps: [{ marks: [] }] }, 'too-few-laps', /^A swim needs/],
    [{ ...set, sendOff: 0 }, 'not-a-time', /^The send-off must be/],
    [{ ...set, sendOff: null }, 'not-a-time', /^The send-off must be/],
    [{ ...set, rest: 0.5 }, 'not-a-time', /^The rest must be/],
    [{ ...set, rest: -1 }, 'out-of-range', /^The rest must be zero or more\.$/],
    [{ ...set, sendOff: 9000, rest: 2000 }, 'wrong-shape', /give only one of them\.$/],
  ])('%j', (given, code, message) => {
    expect(refusal(() => setOf(given))).toMatchObject({
      code,
      message: expect.stringMatching(message),
    });
  });

  test('a rep of another distance, and says which', () => {
    const long = splitsFromLaps(50, [3150, 3350, 3400].map(hundredths));
    expect(refusal(() => setOf({ ...set, reps: [rep, long] }))).toMatchObject({
      code: 'rep-distance-differs',
      message:
        "Rep 2 ends at 150, but the set's reps are 100; add its last mark or change the distance.",
    });
    expect(codeOf(() => setOf({ ...set, repDistance: 200 }))).toBe('rep-distance-differs');
  });
});

test.each([
  [{ sendOff: 9000 }, 6500, 2500],
  [{ sendOff: 9000 }, 9000, 0],
  [{ sendOff: 6000 }, 6500, -500],
  [{ rest: 2000 }, 6500, 2000],
  [{}, 6500, null],
])('%j leaves after %d a rest of %s', (timing, swim, rest) => {
  expect(restAfter({ ...set, ...timing } as SwumSet, hundredths(swim))).toBe(rest);
});
