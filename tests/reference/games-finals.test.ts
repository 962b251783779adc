import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { gamesFinals } from './data/games-finals.js';
import { checkReference } from './reference.js';

checkReference(gamesFinals);

const file = readFileSync(new URL('./data/championship-freestyle.csv', import.meta.url), 'utf8');

test.each(gamesFinals.rows)('$place: the laps are those of the file', ({ input }) => {
  expect(file).toContain(`,${input.replaceAll('.', '').replace(/\s+/g, ' ')}\n`);
});
