import { formatTime, parseSet, setTotals } from 'backhalf';
import type { Reference } from '../reference.js';

interface Totals {
  readonly distance: number;
  readonly booked: string | null;
}

/** A handout that prints its own totals. */
export const setHandout: Reference<string, Totals> = {
  key: 'set-handout',
  title: 'Totals that a handout prints for its own set',
  source:
    'A published handout of a masters’ body, its sample set; rests between rounds come on top.',
  standing: 'read',
  rows: [
    {
      place: 'the set, three rounds of six minutes',
      input: '3 × (100 on 2:00, 2×50 on 1:00, 4×25 on :30)',
      published: { distance: 900, booked: '18:00' },
    },
  ],
  compute: (text) => {
    const { distance, booked } = setTotals(parseSet(text));
    return { distance, booked: booked && formatTime(booked, { decimals: 0 }) };
  },
};
