import type { CompareFields } from './fields';

/** Jun Marlow's autumn at the invented club Saltmarsh: four races, one set, and a goal for the 1500. */
export const junAutumn: CompareFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  race: '1500',
  goal: '16:20',
  swims: ['200 2:00.1', '400 4:11.6', '800 8:41.8', '1000 10:56.4'].join('\n'),
  exponent: '7',
  reps: [
    '31.4 33.2',
    '31.6 33.3',
    '31.5 33.1',
    '31.7 33.4',
    '31.6 33.2',
    '31.5 33.3',
    '31.7 33.5',
    '31.6 33.3',
    '31.8 33.4',
    '31.7 33.3',
    '31.6 33.4',
    '31.5 33.0',
  ].join('\n'),
  distance: '100',
  kind: 'halves',
  known: 'sendOff',
  rest: '1:30',
};
