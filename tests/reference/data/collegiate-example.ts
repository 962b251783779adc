import { convertTime, formatTime, parseTime, SCM, SCY } from 'backhalf';
import type { Reference } from '../reference.js';

export const collegiateExample: Reference<string, string> = {
  key: 'collegiate-example',
  title: 'The example printed with the 25 m factors: the third decimal is dropped, not rounded',
  source:
    'US collegiate qualifying standards (Division I), season 2021–22, as quoted by a news report of 2021.',
  standing: 'quoted',
  rows: [{ place: '200 m butterfly to 200 yd', input: '1:50.87', published: '1:40.44' }],
  compute: (time) =>
    formatTime(
      convertTime({ time: parseTime(time), distance: 200, stroke: 'fly', from: SCM }, SCY).time,
    ),
};
