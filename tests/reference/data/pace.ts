import { formatTime, pacePer, parseTime, timeAtPace } from 'backhalf';
import type { Reference } from '../reference.js';

interface Swim {
  readonly time: string;
  readonly distance: number;
}

/** Pace for each 100, and the time that this rounded pace gives back: not always the same. */
export const pace: Reference<Swim, { readonly pace: string; readonly back: string }> = {
  key: 'pace',
  title: 'Pace per 100, and back',
  source: 'Arithmetic: time over distance, to the nearest hundredth',
  standing: 'worked',
  rows: [
    {
      place: 'comes out even',
      input: { time: '16:45.00', distance: 1500 },
      published: { pace: '1:07.00', back: '16:45.00' },
    },
    {
      place: '67.10667 s per 100',
      input: { time: '16:46.60', distance: 1500 },
      published: { pace: '1:07.11', back: '16:46.65' },
    },
    {
      place: '66.66667 s per 100: a rounded pace does not return the time',
      input: { time: '16:40.00', distance: 1500 },
      published: { pace: '1:06.67', back: '16:40.05' },
    },
  ],
  compute: ({ time, distance }) => {
    const each = pacePer(parseTime(time), distance);
    return { pace: formatTime(each), back: formatTime(timeAtPace(each, distance)) };
  },
};
