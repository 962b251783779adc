import { hundredths, restGain } from 'backhalf';
import type { Reference } from '../reference.js';

/** What 10 s of rest are worth, by the distance of the rep in metres. */
export const restGains: Reference<number, number> = {
  key: 'rest-gains',
  title: 'Gain in speed from 10 s of rest, at equal lactate',
  source: 'Olbrecht et al. 1985, Int. J. Sports Med. 6(2), abstract',
  standing: 'read',
  rows: [
    { place: '50 m', input: 50, published: 0.1123 },
    { place: '100 m', input: 100, published: 0.0421 },
    { place: '200 m', input: 200, published: 0.0295 },
    { place: '400 m', input: 400, published: 0.0202 },
  ],
  compute: (metres) => restGain(metres, hundredths(1000)).gain,
};
