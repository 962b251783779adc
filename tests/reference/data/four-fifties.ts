import {
  formatTime,
  fromSeconds,
  hundredths,
  projectBrokenSwim,
  SCM,
  splitsFromLaps,
} from 'backhalf';
import type { Reference } from '../reference.js';

/** A 200 flat out, from 4 × 50 flat out on 20 s rest: mean times of twelve boys of 15, in seconds. */
export const fourFifties: Reference<number, string> = {
  key: 'four-fifties',
  title: 'A whole 200 from 4 × 50 on 20 s rest',
  source: 'Beidaris and Platanou 2025, Sci. J. Sport Perform.',
  standing: 'read',
  rows: [{ place: 'means, 137.12 and 149.33 s', input: 137.12, published: '2:29.33' }],
  compute: (seconds) => {
    const total = fromSeconds(seconds);
    const fifty = splitsFromLaps(25, [total / 8, total / 8].map(hundredths));
    const set = { pool: SCM, repDistance: 50, reps: Array(4).fill(fifty), rest: hundredths(2000) };
    const { restAware } = projectBrokenSwim(set);
    return restAware === null ? 'none' : formatTime(restAware.time);
  },
};
