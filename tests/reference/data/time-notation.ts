import { formatTime, timeReadings } from 'backhalf';
import type { Reference } from '../reference.js';

/** How coaches write times, and what they mean by it; likeliest first. */
export const timeNotation: Reference<string, readonly string[]> = {
  key: 'time-notation',
  title: 'Ways of writing a time',
  source: 'Common practice on pool decks; no standard was found',
  standing: 'common practice',
  rows: [
    { place: 'lap', input: '33.5', published: ['33.50'] },
    { place: 'lap, two decimals', input: '33.50', published: ['33.50'] },
    { place: 'decimal comma', input: '33,5', published: ['33.50'] },
    { place: 'minutes', input: '1:05.3', published: ['1:05.30'] },
    { place: 'minutes, decimal comma', input: '1:05,3', published: ['1:05.30'] },
    { place: 'point for the colon, decimal comma', input: '1.05,3', published: ['1:05.30'] },
    { place: 'point for the colon', input: '1.05.30', published: ['1:05.30'] },
    { place: 'seconds past 60', input: '65.3', published: ['1:05.30'] },
    { place: 'long swim', input: '16:46.6', published: ['16:46.60'] },
    { place: 'hours', input: '1:02:03.45', published: ['1:02:03.45'] },
    { place: 'two times in one', input: '1.05', published: ['1:05.00', '0:01.05'] },
    {
      place: 'three digits',
      input: '105',
      published: ['1:05.00', '10.50', '0:01.05', '1:45.00'],
    },
    { place: 'four digits, a lap first', input: '3350', published: ['33.50', '33:50.00'] },
    { place: 'four digits, a long swim first', input: '1646', published: ['16:46.00', '16.46'] },
    { place: 'five digits', input: '10530', published: ['1:05.30', '1:05:30.00'] },
    { place: 'no time', input: 'NT', published: [] },
    { place: 'no show', input: 'NS', published: [] },
    { place: 'disqualified', input: 'DQ', published: [] },
    { place: 'did not finish', input: 'DNF', published: [] },
  ],
  compute: (text) => timeReadings(text).map((time) => formatTime(time)),
};
