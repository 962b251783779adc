import { convertDistance, type Unit } from 'backhalf';
import type { Reference } from '../reference.js';

interface Conversion {
  readonly distance: number;
  readonly from: Unit;
  readonly to: Unit;
}

/** The yard in metres. */
export const yard: Reference<Conversion, number> = {
  key: 'yard',
  title: 'Yards and metres',
  source: 'International yard and pound agreement of 1959: 1 yd = 0.9144 m',
  standing: 'from memory',
  rows: [
    {
      place: 'the agreement itself',
      input: { distance: 1, from: 'yd', to: 'm' },
      published: 0.9144,
    },
    { place: '25 yd, worked', input: { distance: 25, from: 'yd', to: 'm' }, published: 22.86 },
    {
      place: '1650 yd, worked',
      input: { distance: 1650, from: 'yd', to: 'm' },
      published: 1508.76,
    },
    { place: '25 m, worked', input: { distance: 25, from: 'm', to: 'yd' }, published: 27.34033 },
  ],
  compute: ({ distance, from, to }) => convertDistance(distance, from, to),
  tolerance: 0.000_005,
};
