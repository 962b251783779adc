import { parseTime, points } from 'backhalf';
import type { Reference } from '../reference.js';

interface Scored {
  readonly base: string;
  readonly time: string;
}

export const SOURCE =
  'World Aquatics points: 1000 · (B / T)³, truncated; worked on paper. The base times are from memory and serve the arithmetic only.';

const scored = (base: string, time: string, published: number) => ({
  place: `${time} against ${base}`,
  input: { base, time },
  published,
});

export const pointsWorked: Reference<Scored, number> = {
  key: 'points-worked',
  title: 'Points of a time',
  source: SOURCE,
  standing: 'worked',
  rows: [
    scored('46.91', '52.80', 701), // 701.28
    scored('46.91', '52.81', 700), // 700.89
    scored('46.91', '52.83', 700), // 700.09
    scored('46.91', '52.84', 699), // 699.69
    scored('14:31.02', '16:46.60', 647), // 647.908
    scored('15:20.48', '16:46.60', 764), // 764.667
    scored('3:56.46', '4:10.00', 846), // 846.161
    scored('46.91', '1:33.82', 125),
    scored('46.91', '46.91', 1000),
  ],
  compute: ({ base, time }) => points(parseTime(time), parseTime(base)),
};
