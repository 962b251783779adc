import { formatTime, officialTime, parseTime } from 'backhalf';
import type { Reference } from '../reference.js';

/** Watches of a race that has no automatic time; the rule names the case, the times are made up. */
export const watches: Reference<readonly string[], string> = {
  key: 'watches',
  title: 'Official time from watches',
  source:
    'World Aquatics swimming rules, SW 11.2 (no third decimal) and SW 11.3.1 to 11.3.3 (watches)',
  standing: 'worked',
  rows: [
    {
      place: 'SW 11.3.1: two of three agree',
      input: ['1:07.12', '1:07.12', '1:07.30'],
      published: '1:07.12',
    },
    {
      place: 'SW 11.3.2: all three differ',
      input: ['1:07.30', '1:07.12', '1:07.15'],
      published: '1:07.15',
    },
    { place: 'SW 11.3.3: two watches', input: ['33.56', '33.74'], published: '33.65' },
    {
      place: 'SW 11.3.3 with 11.2: the mean is 31.725',
      input: ['31.78', '31.67'],
      published: '31.72',
    },
    { place: 'SW 11.3.3: two watches 0.60 apart', input: ['34.28', '34.88'], published: '34.58' },
    {
      place: 'SW 11.3.3 with 11.2: the mean is 1:00.015',
      input: ['1:00.01', '1:00.02'],
      published: '1:00.01',
    },
  ],
  compute: (times) => formatTime(officialTime(times.map(parseTime))),
};
