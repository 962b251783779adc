import { clockFinishes, clockReadings, hundredths } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, difference, lap, nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const count = (max: number) => fc.integer({ min: 1, max });
const lane = fc.record({ sendOff: lap, reps: count(40), stagger: lap, swimmers: count(10) });

/** By another road: count on from the start in big integers, and look at the hand. */
const hand = (...times: number[]) =>
  Number(((times.reduce((sum, t) => sum + BigInt(t), 0n) % 6000n) + 6000n) % 6000n);

describe('clockReadings', () => {
  test('shows the hand at each departure, one row a swimmer', () => {
    fc.assert(
      fc.property(difference, lane, (start, timing) => {
        const rows = clockReadings(start, timing);
        expect(rows).toHaveLength(timing.swimmers);
        rows.forEach((row, swimmer) => {
          expect(row).toHaveLength(timing.reps);
          row.forEach((reading, rep) => {
            const shown = hand(start, rep * timing.sendOff, swimmer * timing.stagger);
            expect(reading).toBe(shown);
          });
        });
      }),
    );
  });

  test('stays exact where times are absurd', () => {
    const sendOff = hundredths(Number.MAX_SAFE_INTEGER);
    const [row = []] = clockReadings(hundredths(-1), { sendOff, reps: 10_000 });
    const last = (BigInt(sendOff) * 9999n - 1n) % 6000n;
    expect(row.at(-1)).toBe(Number(last));
  });

  test('never shows −0, also before the top', () => {
    expect(clockReadings(hundredths(-6000), { sendOff: hundredths(6000), reps: 1 })).toStrictEqual([
      [0],
    ]);
  });

  test('refuses a start that is no time', () => {
    const timing = { sendOff: hundredths(9000), reps: 2 };
    expect(codeOf(() => clockReadings(hundredths(0.5 * 1), timing))).toBe('not-a-time');
    expect(codeOf(() => clockReadings(undefined as never, timing))).toBe('not-a-time');
  });

  test('answers anything with readings or a PacingError', () => {
    const timing = nearly(fc.record({ sendOff: nearly(lap), reps: nearly(count(9)) }));
    fc.assert(
      fc.property(nearly(difference), timing, (start, given) =>
        isSound(() => clockReadings(start, given)),
      ),
    );
  });
});

describe('clockFinishes', () => {
  test('shows the hand a swim after each departure', () => {
    fc.assert(
      fc.property(
        difference,
        lane,
        fc.array(lap, { minLength: 1, maxLength: 8 }),
        (start, timing, swims) => {
          const lefts = clockReadings(start, { ...timing, swimmers: swims.length });
          const finishes = clockFinishes(start, { ...timing, swims });
          expect(finishes).toEqual(lefts.map((row, i) => row.map((left) => hand(left, swims[i]!))));
        },
      ),
    );
  });

  test('refuses a lane without swimmers', () => {
    const timing = { sendOff: hundredths(9000), reps: 2, swims: [] };
    expect(codeOf(() => clockFinishes(hundredths(0), timing))).toBe('out-of-range');
  });

  test('answers anything with readings or a PacingError', () => {
    const timing = fc.record({ sendOff: nearly(lap), reps: nearly(count(9)), swims: anything });
    fc.assert(
      fc.property(nearly(difference), nearly(timing), (start, given) =>
        isSound(() => clockFinishes(start, given as never)),
      ),
    );
  });
});
