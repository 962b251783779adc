import { hundredths, impliedTime, reserveThrough, SCM, splitsFromLaps } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const pieces = (count: number, time: number, rest: number) => ({
  pool: SCM,
  repDistance: 100,
  reps: Array(count).fill(splitsFromLaps(100, [hundredths(time)])),
  rest: hundredths(rest),
});
const forms = [
  { form: 'linear' },
  { form: 'differential' },
  { form: 'integral', tau: 300 },
] as const;

describe('impliedTime', () => {
  test('linear: the continuous time is the time on the clock, rests included', () => {
    const { time } = impliedTime(pieces(4, 6000, 1000), {
      reserve: 20,
      recovery: { form: 'linear' },
    });
    expect(time).toBe(4 * 6000 + 3 * 1000);
  });

  test('without a rest the swim is continuous already, in every form that only spends above the line', () => {
    for (const recovery of forms.slice(0, 2)) {
      expect(impliedTime(pieces(4, 6000, 0), { reserve: 20, recovery }).time).toBe(24_000);
    }
  });

  test.each(forms)('$form: at the speed it implies, the set uses the reserve up', (recovery) => {
    const set = pieces(5, 6800, 1500);
    const { time } = impliedTime(set, { reserve: 22, recovery });
    const speed = (500 - 22) / (time / 100);
    const { lowest } = reserveThrough(set, { speed, reserve: 22 }, { recovery });
    expect(Math.abs(lowest)).toBeLessThan(0.02);
  });

  test('more rest implies a slower continuous swim', () => {
    const rest = fc.integer({ min: 0, max: 6000 });
    fc.assert(
      fc.property(rest, rest, fc.constantFrom(...forms), (a, b, recovery) => {
        const time = (r: number) => impliedTime(pieces(4, 6500, r), { reserve: 20, recovery }).time;
        expect(time(Math.max(a, b))).toBeGreaterThanOrEqual(time(Math.min(a, b)) - 1);
      }),
    );
  });

  test('has no range, and says so', () => {
    const { range, cautions } = impliedTime(pieces(4, 6000, 1000), {
      reserve: 20,
      recovery: forms[0],
    });
    expect(range).toBeNull();
    expect(cautions.map(({ code }) => code)).toContain('no-range');
  });

  test.each([
    ['a reserve larger than all that was swum', pieces(1, 6000, 0), 200, 'reserve-does-not-fit'],
    ['a set whose rest is open', { ...pieces(2, 6000, 0), rest: undefined }, 20, 'set-incomplete'],
  ])('refuses %s', (_, set, reserve, code) => {
    const { rest, ...open } = set;
    const given = rest === undefined ? open : { ...open, rest };
    expect(() => impliedTime(given, { reserve, recovery: forms[0] })).toThrow(
      expect.objectContaining({ code }),
    );
  });
});
