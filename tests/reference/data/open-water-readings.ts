import { hundredths, readCurrent } from 'backhalf';
import type { Reference } from '../reference.js';
import { SOURCE } from './open-water-plans.js';

export const openWaterReadings: Reference<
  { readonly distance: number; readonly out: number; readonly back: number },
  { readonly speed: number; readonly current: number }
> = {
  key: 'open-water-readings',
  title: 'The current read from a leg out and back',
  source: SOURCE,
  standing: 'worked',
  tolerance: 5e-8,
  rows: [
    {
      place: '750 m out in 11:00, back in 9:00',
      input: { distance: 750, out: 66_000, back: 54_000 },
      published: { speed: 1.2626263, current: -0.1262626 },
    },
  ],
  compute({ distance, out, back }) {
    const { speed, current } = readCurrent(distance, hundredths(out), hundredths(back));
    return { speed, current };
  },
};
