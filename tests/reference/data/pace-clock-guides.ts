import { clockReadings, parseTime, toSeconds } from 'backhalf';
import type { Reference } from '../reference.js';

interface Set {
  readonly sendOff: string;
  readonly reps: number;
}

/** What swimmers are taught to expect of the hand: it counts back, or walks forward, by fives. */
export const paceClockGuides: Reference<Set, readonly number[]> = {
  key: 'pace-clock-guides',
  title: 'The hand of the pace clock at each departure, from the top',
  source: 'Guides to the pace clock by clubs and national masters bodies; no standard exists',
  standing: 'common practice',
  rows: [
    {
      place: '0:55: back by fives',
      input: { sendOff: '55.00', reps: 6 },
      published: [0, 55, 50, 45, 40, 35],
    },
    {
      place: '0:45: back by quarters',
      input: { sendOff: '45.00', reps: 5 },
      published: [0, 45, 30, 15, 0],
    },
    {
      place: '1:05: forward by fives',
      input: { sendOff: '1:05.00', reps: 4 },
      published: [0, 5, 10, 15],
    },
    { place: '0:40', input: { sendOff: '40.00', reps: 4 }, published: [0, 40, 20, 0] },
    {
      place: '0:50: back by tens',
      input: { sendOff: '50.00', reps: 7 },
      published: [0, 50, 40, 30, 20, 10, 0],
    },
  ],
  compute: ({ sendOff, reps }) =>
    clockReadings(parseTime('0.00'), { sendOff: parseTime(sendOff), reps })
      .flat()
      .map(toSeconds),
};
