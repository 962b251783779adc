import { formatTime, parseTime, planRace, type RaceOptions, SCM, SCY } from 'backhalf';
import type { Reference } from '../reference.js';

type Race = Omit<RaceOptions, 'goal'> & { readonly goal: string };

/** Each running total is the exact fraction of the goal, to the nearest hundredth. */
export const racePlansWorked: Reference<
  Race,
  { readonly laps: readonly number[]; readonly halves: readonly string[] }
> = {
  key: 'race-plans-worked',
  title: 'Race plans whose laps add up',
  source:
    'Arithmetic: the running total rounded, never the lap; first half = (goal − difference) / 2',
  standing: 'worked',
  rows: [
    {
      place: '16:40.00 in 15 × 100, even',
      input: { pool: SCM, distance: 1500, goal: '16:40.00', shape: 'even', every: 100 },
      published: {
        laps: Array.from({ length: 5 }, () => [6667, 6666, 6667]).flat(),
        halves: ['8:20.00', '8:20.00'],
      },
    },
    {
      place: '16:46.60 in 30 × 50, even',
      input: { pool: SCM, distance: 1500, goal: '16:46.60', shape: 'even', every: 50 },
      published: {
        laps: Array.from({ length: 10 }, () => [3355, 3356, 3355]).flat(),
        halves: ['8:23.30', '8:23.30'],
      },
    },
    {
      place: '500 yd in 5:00.00, second half 2.00 faster',
      input: {
        pool: SCY,
        distance: 500,
        goal: '5:00.00',
        shape: { secondHalf: -200 as RaceOptions['goal'] },
        every: 250,
      },
      published: { laps: [15_100, 14_900], halves: ['2:31.00', '2:29.00'] },
    },
    {
      place: '1650 yd in 18:20.01, second half 2.01 faster, halfway at length 33 of 66',
      input: {
        pool: SCY,
        distance: 1650,
        goal: '18:20.01',
        shape: { secondHalf: -201 as RaceOptions['goal'] },
        every: 825,
      },
      published: { laps: [55_101, 54_900], halves: ['9:11.01', '9:09.00'] },
    },
    {
      place: '200 m in 2:20.01, second half 2.00 slower: the first half takes the odd hundredth',
      input: {
        pool: SCM,
        distance: 200,
        goal: '2:20.01',
        shape: { secondHalf: 200 as RaceOptions['goal'] },
        every: 100,
      },
      published: { laps: [6901, 7100], halves: ['1:09.01', '1:11.00'] },
    },
  ],
  compute: ({ goal, ...race }) => {
    const { laps, halves } = planRace({ ...race, goal: parseTime(goal) });
    return { laps, halves: halves ? [halves.first, halves.second].map((t) => formatTime(t)) : [] };
  },
};
