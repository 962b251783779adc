import { parseTime, strokeMetrics } from 'backhalf';
import type { Reference } from '../reference.js';

/** A swim whose stroke rate was measured in mid-pool. */
export interface Measured {
  readonly distance: number;
  /** Seconds, or the text of the time. */
  readonly time: string;
  /** Cycles per minute. */
  readonly rate: number;
}

/** Metres per cycle. Mid-pool stroking leaves the push-offs out; whole lengths have them in. */
export function perCycle({ distance, time, rate }: Measured): number {
  const swum = parseTime(time);
  return strokeMetrics({ distance, time: swum, cycles: (rate * swum) / 6000 }).perCycle;
}

export const strokeLength1998: Reference<Measured, number> = {
  key: 'stroke-length-1998',
  title: 'Distance per stroke, metres, from 400 m time and stroke rate',
  source: 'Chatard et al. 1998, Med. Sci. Sports Exerc. 30(8); 8 swimmers.',
  standing: 'read',
  tolerance: 0.02, // 1 %: stroke length was measured in mid-pool
  rows: [
    {
      place: '400 m alone',
      input: { distance: 400, time: '4:57.25', rate: 41.3 },
      published: 1.97,
    },
    {
      place: '400 m behind a leader',
      input: { distance: 400, time: '4:47.69', rate: 39.9 },
      published: 2.1,
    },
  ],
  compute: perCycle,
};
