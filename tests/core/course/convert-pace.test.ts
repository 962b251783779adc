import {
  type ConvertPaceOptions,
  convertPace,
  convertTime,
  hundredths,
  isPacingError,
  LCM,
  SCM,
  SCY,
} from 'backhalf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anything, lap, nearly } from '../../generators.js';

const gainPerTurn = hundredths(60);

test('a pace per 100 loses two turns from 25 m to 50 m', () => {
  expect(convertPace(hundredths(6700), SCM, LCM, { gainPerTurn })).toBe(6820);
  expect(convertPace(hundredths(6700), LCM, SCM, { gainPerTurn })).toBe(6580);
  expect(convertPace(hundredths(3350), SCM, LCM, { gainPerTurn, per: 50 })).toBe(3410);
});

test('a pace per 100 m becomes one per 100 yd, and back', () => {
  // 67.00 × 0.9144 = 61.2648; the slowest that still converts to 67.00 is 61.26.
  expect(convertPace(hundredths(6700), SCM, SCY, { gainPerTurn })).toBe(6126);
  expect(convertPace(hundredths(6126), SCY, SCM, { gainPerTurn })).toBe(6699);
  expect(convertPace(hundredths(6000), SCY, SCM, { gainPerTurn, yardRatio: 1.1 })).toBe(6600);
});

test('a pace needs its gain, and a stretch that ends at a wall', () => {
  const code = (name: string) => expect.objectContaining({ code: name });
  expect(() => convertPace(hundredths(6700), SCM, LCM, JSON.parse('{}'))).toThrow(
    code('gain-missing'),
  );
  expect(() => convertPace(hundredths(6700), SCM, LCM, { gainPerTurn, per: 75 })).toThrow(
    code('not-whole-lengths'),
  );
  for (const per of [0.5, 2_000_000]) {
    expect(() => convertPace(hundredths(6700), SCM, LCM, { gainPerTurn, per })).toThrow(
      code('out-of-range'),
    );
  }
});

test('a pace over a race distance is the race converted', () => {
  fc.assert(
    fc.property(lap, (time) => {
      const race = { time, distance: 200, stroke: 'back' as const, from: SCY };
      expect(convertPace(time, SCY, LCM, { gainPerTurn, per: 200 })).toBe(
        convertTime(race, LCM, { gainPerTurn }).time,
      );
    }),
  );
});

test('anything else is refused by a PacingError', () => {
  const pool = nearly(fc.constantFrom(SCY, SCM, LCM));
  const options = nearly(
    fc.record({ gainPerTurn: nearly(lap), per: nearly(fc.nat()), yardRatio: anything }),
  );
  fc.assert(
    fc.property(nearly(lap), pool, pool, options, (pace, from, to, how) => {
      try {
        expect(Number.isSafeInteger(convertPace(pace, from, to, how as ConvertPaceOptions))).toBe(
          true,
        );
      } catch (error) {
        if (!isPacingError(error)) throw error;
      }
    }),
  );
});
