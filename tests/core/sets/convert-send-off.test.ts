import { convertSendOff, hundredths, isPacingError, LCM, SCM, SCY } from 'backhalf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anything, lap, nearly } from '../../generators.js';

const base = { repDistance: 100, gainPerTurn: hundredths(60) };

test('a send-off is rounded to the clock as the coach asks', () => {
  // 1:30.00 × 1250 / 1143 = 1:38.43, and two turns fewer: 1:39.63.
  const asked = (options: object) =>
    convertSendOff(hundredths(9000), SCY, LCM, { ...base, ...options });
  expect(asked({})).toBe(10_000);
  expect(asked({ round: 'down' })).toBe(9500);
  expect(asked({ step: hundredths(1) })).toBe(9963);
  expect(asked({ step: hundredths(1000), round: 'nearest' })).toBe(10_000);
  expect(asked({ repDistance: 50, step: hundredths(1) })).toBe(9903);
});

test('the rep must be told, and end at a wall', () => {
  const code = (name: string) => expect.objectContaining({ code: name });
  const call = (options: object) => () =>
    convertSendOff(hundredths(9000), SCM, LCM, { ...base, ...options });
  expect(call({ repDistance: undefined })).toThrow(code('out-of-range'));
  expect(call({ repDistance: 75 })).toThrow(code('not-whole-lengths'));
  expect(call({ gainPerTurn: undefined })).toThrow(code('gain-missing'));
});

test('rounded up, it is never less than the converted time and less than a step more', () => {
  fc.assert(
    fc.property(lap, (sendOff) => {
      const exact = convertSendOff(sendOff, SCM, LCM, { ...base, step: hundredths(1) });
      const called = convertSendOff(sendOff, SCM, LCM, base);
      expect(called % 500).toBe(0);
      expect(called - exact).toBeGreaterThanOrEqual(0);
      expect(called - exact).toBeLessThan(500);
    }),
  );
});

test('anything else is refused by a PacingError', () => {
  const pool = nearly(fc.constantFrom(SCY, SCM, LCM));
  const options = nearly(
    fc.record({
      repDistance: nearly(fc.nat()),
      gainPerTurn: nearly(lap),
      step: nearly(lap),
      round: anything,
    }),
  );
  fc.assert(
    fc.property(nearly(lap), pool, pool, options, (sendOff, from, to, how) => {
      try {
        const got = convertSendOff(sendOff, from, to, how as never);
        expect(Number.isSafeInteger(got)).toBe(true);
      } catch (error) {
        if (!isPacingError(error)) throw error;
      }
    }),
  );
});
