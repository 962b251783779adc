import { isPacingError, OPEN_WATER_EFFECTS, speedWithEffect } from 'backhalf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearly } from '../../generators.js';

test('every published effect is a range with its conditions and its source', () => {
  for (const { low, high, conditions, source } of Object.values(OPEN_WATER_EFFECTS)) {
    expect(low).toBeLessThan(high);
    expect(conditions.length).toBeGreaterThan(20);
    expect(source.length).toBeGreaterThan(20);
  }
});

test('a wetsuit: the published range, 3.2 to 12.9 %', () => {
  const { low, high, covers } = speedWithEffect(1, 'wetsuit');
  expect([low, high]).toEqual([1.032, 1.129]);
  expect(covers).toMatch(/26 studies.*Gay et al\. 2022/);
});

test('drafting: from nothing to what was measured, 4:57.25 to 4:47.69 over 400 m', () => {
  const { low, high, covers } = speedWithEffect(400 / 297.25, 'drafting');
  expect(low).toBe(400 / 297.25);
  expect(high).toBeCloseTo(400 / 287.69, 3);
  expect(covers).toContain('Chatard et al. 1998');
});

test('anything else is refused by a PacingError', () => {
  const speed = nearly(fc.double({ min: 0.1, max: 4, noNaN: true }));
  const effect = nearly(fc.constantFrom('drafting' as const, 'wetsuit' as const));
  fc.assert(
    fc.property(speed, effect, (v, name) => {
      try {
        const { low, high } = speedWithEffect(v, name);
        expect(low).toBeLessThanOrEqual(high);
      } catch (error) {
        if (!isPacingError(error)) throw error;
      }
    }),
  );
});
