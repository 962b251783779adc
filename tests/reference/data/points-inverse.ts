import { formatTime, parseTime, timeForPoints } from 'backhalf';
import type { Reference } from '../reference.js';
import { SOURCE } from './points-worked.js';

interface Wanted {
  readonly base: string;
  readonly points: number;
}

export const pointsInverse: Reference<Wanted, string> = {
  key: 'points-inverse',
  title: 'Fastest time that still scores the points',
  source: SOURCE,
  standing: 'worked',
  rows: [
    {
      place: '1000 points against 14:31.02',
      input: { base: '14:31.02', points: 1000 },
      published: '14:30.73',
    },
    {
      place: '700 points against 46.91',
      input: { base: '46.91', points: 700 },
      published: '52.81',
    },
  ],
  compute: ({ base, points: wanted }) => formatTime(timeForPoints(wanted, parseTime(base))),
};
