import { hundredths, strokeMetrics } from 'backhalf';
import type { Reference } from '../reference.js';

interface Counted {
  readonly distance: number;
  readonly time: number;
  readonly cycles: number;
}

interface Metrics {
  readonly speed: number;
  readonly rate: number;
  readonly perCycle: number;
  readonly index: number;
}

export const strokeWorked: Reference<Counted, Metrics> = {
  key: 'stroke-worked',
  title: 'Speed, stroke rate, distance per stroke and stroke index worked on paper',
  source: 'Worked from the definitions.',
  standing: 'worked',
  tolerance: 5e-7,
  rows: [
    {
      place: '50 m in 30.00 with 18 cycles',
      input: { distance: 50, time: 3000, cycles: 18 },
      published: { speed: 1.666667, rate: 36, perCycle: 2.777778, index: 4.62963 },
    },
    {
      place: '25 m in 15.50 with 8.5 cycles',
      input: { distance: 25, time: 1550, cycles: 8.5 },
      published: { speed: 1.612903, rate: 32.903226, perCycle: 2.941176, index: 4.743833 },
    },
  ],
  compute: ({ time, ...swim }) => strokeMetrics({ ...swim, time: hundredths(time) }),
};
