import { LCM, parseTime, planRace } from 'backhalf';
import type { Reference } from '../reference.js';

interface Event {
  readonly sex: 'W' | 'M';
  readonly distance: number;
}

/** The measured championship shapes against what others measured at other meets. */
export const fastestLaps: Reference<Event, readonly number[]> = {
  key: 'fastest-laps',
  title: 'First and last lap are the fastest of a championship race',
  source:
    'López-Belmonte et al. 2022, Int. J. Perform. Anal. Sport 22(1): 400, 800 and 1500 m, 256 swims of 2021, first and last lap fastest, the middle even',
  standing: 'read',
  rows: [
    { place: 'women’s 400 m, laps 1 and 8', input: { sex: 'W', distance: 400 }, published: [1, 8] },
    { place: 'men’s 400 m, laps 1 and 8', input: { sex: 'M', distance: 400 }, published: [1, 8] },
    {
      place: 'women’s 800 m, laps 1 and 16',
      input: { sex: 'W', distance: 800 },
      published: [1, 16],
    },
    {
      place: 'men’s 1500 m, laps 1 and 30',
      input: { sex: 'M', distance: 1500 },
      published: [1, 30],
    },
  ],
  compute: ({ sex, distance }) => {
    const goal = parseTime('15:00.00');
    const plan = planRace({ pool: LCM, distance, goal, shape: { championship: sex } });
    const ranked = plan.laps
      .map((lap, i) => ({ lap, number: i + 1 }))
      .sort((a, b) => a.lap - b.lap);
    return ranked.slice(0, 2).map(({ number }) => number);
  },
};
