import type { SetFields } from './model';

/** Mara Quill's Tuesday set at the invented club Saltmarsh: 20 × 100 on 1:30, timed at the turn. */
const halves = [
  '31.2 33.1',
  '31.4 33.3',
  '31.5 33.4',
  '31.3 33.6',
  '31.6 33.5',
  '31.5 33.4',
  '31.4 33.7',
  '31.7 33.5',
  '31.5 33.3',
  '31.6 33.6',
  '31.4 33.5',
  '31.5 33.6',
  '31.8 33.4',
  '31.5 33.5',
  '31.6 33.7',
  '31.4 33.6',
  '31.5 33.4',
  '31.7 33.6',
  '31.5 33.5',
  '31.4 33.8',
];

export const tuesday: SetFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  distance: '100',
  kind: 'halves',
  reps: halves.join('\n'),
  known: 'sendOff',
  rest: '1:30',
  race: '1500',
};
