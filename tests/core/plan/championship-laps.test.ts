import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CHAMPIONSHIP_LAPS } from '../../../packages/core/src/plan/championship-laps.js';
import { measuredShapes } from '../../../scripts/measure-shapes.js';

const csv = readFileSync(
  new URL('../../reference/data/championship-freestyle.csv', import.meta.url),
  'utf8',
);

test('the constants are what the open race data gives today', () => {
  expect(CHAMPIONSHIP_LAPS).toEqual(measuredShapes(csv));
});

test('the measure, by hand on two finals: each swim counts alike, whatever its time', () => {
  const rows = [
    'sex,distance,phase,time,laps',
    'W,100,final,10000,4800 5200',
    'W,100,final,20000,10000 10000',
    'W,100,heat,10000,1000 9000',
    'M,100,final,9000,4500 4500',
  ];
  expect(measuredShapes(rows.join('\n'))).toEqual([
    { sex: 'M', distance: 100, swims: 1, laps: [10_000, 10_000] },
    { sex: 'W', distance: 100, swims: 2, laps: [9800, 10_200] },
  ]);
});
