import { compareHalves, formatTime, halvesOf, parseTime, splitsFromLaps } from 'backhalf';
import type { Reference } from '../reference.js';

interface Halved {
  readonly time: string;
  readonly first: string;
  readonly second: string;
  readonly difference: string;
}

/** Two Olympic finals by their winners' laps of 50 m. */
export const gamesFinals: Reference<string, Halved> = {
  key: 'games-finals',
  title: 'Halves of two Olympic finals',
  source: 'Official results of the Olympic Games, via the open dataset swimset; halves worked',
  standing: 'open data',
  rows: [
    {
      place: 'men’s 400 m, 2016, winner',
      input: '26.05 28.01 28.74 28.39 28.55 28.27 27.39 26.15',
      published: { time: '3:41.55', first: '1:51.19', second: '1:50.36', difference: '−0.83' },
    },
    {
      place: 'men’s 1500 m, 2008, winner',
      input: `27.24 29.25 29.54 29.75 29.65 29.57 29.59 29.59 29.71 29.83 29.87 29.88 29.79 29.79 29.54
        29.65 29.37 29.68 29.66 29.46 29.44 29.40 29.10 29.37 29.36 29.25 29.04 29.31 28.45 27.71`,
      published: { time: '14:40.84', first: '7:22.59', second: '7:18.25', difference: '−4.34' },
    },
  ],
  compute: (laps) => {
    const swim = splitsFromLaps(50, laps.split(/\s+/).map(parseTime));
    const halves = halvesOf(swim);
    return {
      time: formatTime(swim.marks.at(-1)!.time),
      first: formatTime(halves.first),
      second: formatTime(halves.second),
      difference: formatTime(compareHalves(halves).difference),
    };
  },
};
