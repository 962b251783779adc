import { formatTime, lapsOf, parseTime, type Splits, splitsFromCumulative } from 'backhalf';
import type { Reference } from '../reference.js';

const CUMULATIVE = `28.56 59.34 1:30.41 2:01.85 2:32.89 3:04.03 3:35.23 4:06.57 4:37.74 5:09.13
  5:40.41 6:11.76 6:42.96 7:14.25 7:45.55 8:16.90 8:47.98 9:19.11 9:50.07 10:20.96 10:52.08 11:23.08
  11:53.81 12:24.95 12:55.66 13:26.65 13:57.56 14:28.52 14:59.37 15:28.36`;

/** A world record over 1500 m, by its official splits at every 50 m. */
export const record: Splits = splitsFromCumulative(50, CUMULATIVE.split(/\s+/).map(parseTime));

/** Its laps of 50 are printed beside the splits; longer laps are worked from them. */
export const recordLaps: Reference<number, string> = {
  key: 'record-laps',
  title: 'Laps of a world record over 1500 m',
  source: 'Official splits of the women’s 1500 m world record of 2014, 50 m pool, in a news report',
  standing: 'quoted',
  rows: [
    {
      place: 'laps of 50 m, as printed',
      input: 50,
      published:
        `28.56 30.78 31.07 31.44 31.04 31.14 31.20 31.34 31.17 31.39 31.28 31.35 31.20 31.29
        31.30 31.35 31.08 31.13 30.96 30.89 31.12 31.00 30.73 31.14 30.71 30.99 30.91 30.96 30.85 28.99`
          .split(/\s+/)
          .join(' '),
    },
    {
      place: 'laps of 100 m, worked',
      input: 100,
      published: `59.34 1:02.51 1:02.18 1:02.54 1:02.56 1:02.63 1:02.49 1:02.65 1:02.21 1:01.85
        1:02.12 1:01.87 1:01.70 1:01.87 59.84`
        .split(/\s+/)
        .join(' '),
    },
    { place: 'thirds, worked', input: 500, published: '5:09.13 5:11.83 5:07.40' },
    { place: 'halves, worked', input: 750, published: '7:45.55 7:42.81' },
    { place: 'the whole swim, as printed', input: 1500, published: '15:28.36' },
  ],
  compute: (every) =>
    lapsOf(record, every)
      .map((lap) => formatTime(lap))
      .join(' '),
};
