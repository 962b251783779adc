import { crossCurrent } from 'backhalf';
import type { Reference } from '../reference.js';
import { SOURCE } from './open-water-plans.js';

export const openWaterCrossings: Reference<
  { readonly speed: number; readonly cross: number },
  { readonly heading: number; readonly groundSpeed: number; readonly driftPer100: number }
> = {
  key: 'open-water-crossings',
  title: 'Heading, in degrees, and speed made good across a current',
  source: SOURCE,
  standing: 'worked',
  tolerance: 6e-7,
  rows: [
    {
      place: '1.25 m/s across 0.25',
      input: { speed: 1.25, cross: 0.25 },
      published: { heading: 11.536959, groundSpeed: 1.2247449, driftPer100: 20 },
    },
    {
      place: '1.30 m/s across 0.50: the triangle 5, 12, 13',
      input: { speed: 1.3, cross: 0.5 },
      published: { heading: 22.619865, groundSpeed: 1.2, driftPer100: 500 / 13 },
    },
  ],
  compute: ({ speed, cross }) => crossCurrent(speed, cross),
};
