import { hundredths, powerLawThrough, REFERENCE_EXPONENTS } from 'backhalf';
import { expect, test } from 'vitest';

test('REFERENCE_EXPONENTS can each be used, and each says where it comes from', () => {
  expect(REFERENCE_EXPONENTS.length).toBeGreaterThan(5);
  for (const { exponent, what, source } of REFERENCE_EXPONENTS) {
    const law = powerLawThrough({ distance: 400, time: hundredths(24_000) }, exponent);
    expect(law.exponent).toBe(exponent);
    expect(`${what}: ${source}`).toMatch(/\b(19|20)\d\d\b/);
  }
});

test('those from open data are what the track record saw', () => {
  const seen = REFERENCE_EXPONENTS.filter(({ standing }) => standing === 'open data');
  expect(seen.map(({ exponent }) => exponent.toFixed(3))).toEqual([
    '1.074',
    '1.054',
    '1.056',
    '1.035',
    '1.043',
  ]);
  expect(seen[4]!.what).toBe('81 men, best 400 and 1500 m freestyle at one Olympic Games');
});

test('they disagree, which is why there is no default', () => {
  const all = REFERENCE_EXPONENTS.map(({ exponent }) => exponent);
  expect(Math.max(...all) - Math.min(...all)).toBeGreaterThan(0.05);
});
