import { compareHalves, halvesOf, pacingProfile } from 'backhalf';
import type { Reference } from '../reference.js';
import { record } from './record-laps.js';

const profile = pacingProfile(record);
const halves = compareHalves(halvesOf(record));
const figures = {
  'second half less first, hundredths': halves.difference,
  'second half over first': halves.ratio,
  'mean lap, hundredths': profile.mean,
  'standard deviation with n − 1, hundredths': profile.spread,
  'coefficient of variation': profile.variation,
  'mean of laps 2 to 29, hundredths': profile.middle.mean,
  'coefficient of variation of laps 2 to 29': profile.middle.variation,
  'slope of laps 2 to 29, hundredths per lap': profile.middle.drift,
  'first lap against laps 2 to 29': profile.first,
  'last lap against laps 2 to 29': profile.last,
  'number of the fastest lap': profile.fastest,
  'number of the slowest lap': profile.slowest,
};

/** What the splits of that record say, worked with exact fractions. */
export const recordProfile: Reference<keyof typeof figures, number> = {
  key: 'record-profile',
  title: 'Profile of a world record over 1500 m',
  source: 'Worked from the official splits of the women’s 1500 m world record of 2014, 50 m pool',
  standing: 'worked',
  rows: (
    [
      ['second half less first, hundredths', -274],
      ['second half over first', 0.99411448824],
      ['mean lap, hundredths', 3094.53333333],
      ['standard deviation with n − 1, hundredths', 62.440445189],
      ['coefficient of variation', 0.0201776612055],
      ['mean of laps 2 to 29, hundredths', 3110.03571429],
      ['coefficient of variation of laps 2 to 29', 0.00655025157049],
      ['slope of laps 2 to 29, hundredths per lap', -1.22577996716],
      ['first lap against laps 2 to 29', -0.081682571399],
      ['last lap against laps 2 to 29', -0.0678563636155],
      ['number of the fastest lap', 1],
      ['number of the slowest lap', 4],
    ] as const
  ).map(([input, published]) => ({ place: input, input, published })),
  compute: (input) => figures[input],
  tolerance: 1e-8,
};
