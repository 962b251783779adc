import type { Reference } from '../reference.js';
import { type Measured, perCycle } from './stroke-length-1998.js';

export const strokeLength2007: Reference<Measured, number> = {
  key: 'stroke-length-2007',
  title: 'Distance per stroke, metres, from critical speed and stroke rate',
  source: 'A study of stroking at critical speed, Revista Brasileira, 2007.',
  standing: 'read',
  tolerance: 0.07, // 3.4 %: stroke length was measured in mid-pool
  rows: [
    { place: '1.30 m/s', input: { distance: 130, time: '1:40.00', rate: 33.07 }, published: 2.41 },
    { place: '1.17 m/s', input: { distance: 117, time: '1:40.00', rate: 35.57 }, published: 2.04 },
  ],
  compute: perCycle,
};
