import { formatTime, LCM, paceCard, parseTime, planRace, splitsFromCumulative } from 'backhalf';
import type { Reference } from '../reference.js';

/** Times at every 50 m. */
const OFFICIAL =
  '28.56 59.34 1:30.41 2:01.85 2:32.89 3:04.03 3:35.23 4:06.57 4:37.74 5:09.13 5:40.41 6:11.76 6:42.96 7:14.25 7:45.55 8:16.90 8:47.98 9:19.11 9:50.07 10:20.96 10:52.08 11:23.08 11:53.81 12:24.95 12:55.66 13:26.65 13:57.56 14:28.52 14:59.37 15:28.36';

/** A plan in the shape of an official swim, at its time, must show that swim’s own times. */
export const recordAsPlan: Reference<number, readonly string[]> = {
  key: 'record-as-plan',
  title: 'A plan in the shape of a published swim, read at halfway and at the walls',
  source:
    'Official splits of the women’s 1500 m freestyle world record of 2014, 50 m pool, as printed in a news report',
  standing: 'quoted',
  rows: [
    {
      place: 'every 500 m, and halfway at 750 m, where no row of the plan stands',
      input: 500,
      published: ['5:09.13', '10:20.96', '15:28.36', '7:45.55'],
    },
    {
      place: 'every 300 m, and halfway',
      input: 300,
      published: ['3:04.03', '6:11.76', '9:19.11', '12:24.95', '15:28.36', '7:45.55'],
    },
  ],
  compute: (every) => {
    const profile = splitsFromCumulative(50, OFFICIAL.split(' ').map(parseTime));
    const goal = parseTime('15:28.36');
    const plan = planRace({ pool: LCM, distance: 1500, goal, shape: { profile }, every });
    const { rows, halfway } = paceCard(plan);
    return [...rows.map(({ time }) => formatTime(time)), halfway?.text ?? ''];
  },
};
