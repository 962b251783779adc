import { hundredths, projectBrokenSwim, restGain, SCM, SCY, splitsFromLaps } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const ten = hundredths(1000);

describe('restGain', () => {
  test('lies between the two measured gains around it, and says that a curve of ours was read', () => {
    const { gain, between, interpolated } = restGain(75, ten);
    expect(interpolated).toBe(true);
    expect(between).toEqual({ least: 0.0421, most: 0.1123 });
    expect(gain).toBeCloseTo(0.0421 + (0.1123 - 0.0421) * (1 - Math.log2(1.5)), 12);
  });

  test('the longer the rep, the less rest is worth', () => {
    const metres = fc.double({ min: 50, max: 400, noNaN: true });
    fc.assert(
      fc.property(metres, metres, (a, b) => {
        const [short, long] = [Math.min(a, b), Math.max(a, b)];
        expect(restGain(short, ten).gain).toBeGreaterThanOrEqual(restGain(long, ten).gain);
      }),
    );
  });

  test.each([
    ['30 s of rest', 100, 3000],
    ['no rest', 100, 0],
    ['a 25', 25, 1000],
    ['an 800', 800, 1000],
  ])('knows nothing of %s', (_, metres, rest) => {
    expect(() => restGain(metres, hundredths(rest))).toThrow(
      expect.objectContaining({ code: 'not-measured' }),
    );
  });
});

describe('the rest-aware reading of a broken swim', () => {
  const broken = (rest: number, pool = SCM) => ({
    pool,
    repDistance: 100,
    reps: Array(4).fill(splitsFromLaps(50, [3300, 3400].map(hundredths))),
    rest: hundredths(rest),
  });

  test('stands beside the others where 10 s of rest were taken', () => {
    const { restAware, swum } = projectBrokenSwim(broken(1000));
    expect(restAware?.time).toBe(Math.round(swum * 1.0421));
    expect(restAware?.cautions.map(({ code }) => code)).toContain('contested');
  });

  test('is absent where nothing was measured', () => {
    expect(projectBrokenSwim(broken(2500)).restAware).toBeNull();
  });

  test('a yard rep is read at its length in metres', () => {
    const { restAware, swum } = projectBrokenSwim(broken(1000, SCY));
    expect(restAware?.time).toBe(Math.round(swum * (1 + restGain(91.44, ten).gain)));
  });
});
