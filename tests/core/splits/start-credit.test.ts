import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { START_CREDIT } from '../../../packages/core/src/splits/start-credit.js';

const file = new URL('../../reference/data/championship-freestyle.csv', import.meta.url);
const [head, ...rows] = readFileSync(file, 'utf8').trim().split('\n');
const column = (name: string) => head!.split(',').indexOf(name);
const swims = rows.map((row) => {
  const cells = row.split(',');
  const laps = cells[column('laps')]!.split(' ').map(Number);
  return { distance: Number(cells[column('distance')]), laps };
});

// Official results of the Olympic Games 2000–2016, via the open dataset swimset.
test.each(START_CREDIT)('the dive of a $distance is worth $credit, over $swims swims', (stated) => {
  const credits = swims
    .filter(({ distance }) => distance === stated.distance)
    .map(({ laps: [first = Number.NaN, ...rest] }) => {
      const middle = rest.slice(0, -1);
      return middle.reduce((a, b) => a + b) / middle.length - first;
    });
  expect(credits).toHaveLength(stated.swims);
  expect(Math.round(credits.reduce((a, b) => a + b) / credits.length)).toBe(stated.credit);
});

test('every race of the file is there', () => {
  const distances = [...new Set(swims.map(({ distance }) => distance))].sort((a, b) => a - b);
  expect(START_CREDIT.map(({ distance }) => distance)).toEqual(distances);
});
