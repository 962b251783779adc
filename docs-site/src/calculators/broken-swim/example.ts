import type { BrokenFields } from './model';

/** Ivo Tarn's broken 400 at the invented club Saltmarsh: four 100s on 10 s, timed at the turn. */
export const brokenFour: BrokenFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  distance: '100',
  kind: 'halves',
  pieces: ['30.1 31.4', '30.4 31.7', '30.6 31.9', '30.5 31.8'].join('\n'),
  known: 'rest',
  rest: '10',
  race: '',
  reserve: '18',
  tau: '300',
};
