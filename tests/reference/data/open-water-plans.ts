import { planOpenWater } from 'backhalf';
import type { Reference } from '../reference.js';

/** Still-water speed and current in metres per second, and the length of the leg out in metres. */
interface OutAndBack {
  readonly speed: number;
  readonly current: number;
  readonly distance: number;
}

/** Times in hundredths of a second. */
interface Plan {
  readonly turnBuoy: number;
  readonly finish: number;
  readonly stillWater: number;
}

export const SOURCE = 'Worked on paper from L/(v − c) + L/(v + c) and √(v² − c²).';

export const openWaterPlans: Reference<OutAndBack, Plan> = {
  key: 'open-water-plans',
  title: 'Out against a current and back with it',
  source: SOURCE,
  standing: 'worked',
  rows: [
    {
      place: '750 m at 1.25 m/s against 0.25',
      input: { speed: 1.25, current: 0.25, distance: 750 },
      published: { turnBuoy: 75_000, finish: 125_000, stillWater: 120_000 },
    },
    {
      place: '1000 m at 1.40 m/s against 0.10', // 769.230769 s and 666.666667 s
      input: { speed: 1.4, current: 0.1, distance: 1000 },
      published: { turnBuoy: 76_923, finish: 143_590, stillWater: 142_857 },
    },
  ],
  compute({ speed, current, distance }) {
    const legs = [
      { distance, current: -current },
      { distance, current },
    ];
    const { halfway, time, stillWater } = planOpenWater(legs, { speed });
    return { turnBuoy: halfway.time, finish: time, stillWater };
  },
};
