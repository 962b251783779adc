import { fitPowerLaw, parseTime } from 'backhalf';
import type { Reference } from '../reference.js';

/** Two world records of one stroke. */
interface Records {
  readonly short: readonly [distance: number, time: string];
  readonly long: readonly [distance: number, time: string];
}

/** The share of the speed that is lost from one record to the next, which the exponent must give too. */
export const recordsOf1976: Reference<Records, number> = {
  key: 'records-of-1976',
  title: 'Power law: share of the speed lost between two world records, in %',
  source:
    'P. Jokl and E. Jokl 1976, Running and swimming world records, British Journal of Sports Medicine; the 1500 as quoted elsewhere',
  standing: 'quoted',
  rows: [
    {
      place: 'text to table I: men, 100 to 1500 m freestyle, 17 %',
      input: { short: [100, '49.99'], long: [1500, '15:02.40'] },
      published: 17,
    },
  ],
  tolerance: 0.5,
  compute: ({ short, long }) => {
    const races = [short, long].map(([distance, time]) => ({ distance, time: parseTime(time) }));
    const { exponent } = fitPowerLaw(races);
    return 100 * (1 - (short[0] / long[0]) ** (exponent - 1));
  },
};
