import type { WriteFields } from './model';

/** A Thursday of the invented club Saltmarsh. */
export const thursday: WriteFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  set: [
    'Warm-up',
    '400 easy r 30',
    '8 x 50 @ 1:00 d1-4',
    'Main set',
    '3 x (4 x 100 on 1:30 + 200 easy on 4:00)',
    'Cool-down',
    '200 easy',
  ].join('\n'),
  pace: '1:12',
  lane: '1',
};
