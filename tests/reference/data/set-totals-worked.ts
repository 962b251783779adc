import { formatTime, parseSet, parseTime, setTotals } from 'backhalf';
import type { Reference } from '../reference.js';

interface Input {
  readonly set: string;
  readonly pace?: string;
}

interface Totals {
  readonly distance: number;
  readonly booked: string;
  readonly lastDeparture: string;
  readonly duration: string | null;
}

const row = (set: string, distance: number, booked: string, lastDeparture: string) => ({
  place: set,
  input: { set },
  published: { distance, booked, lastDeparture, duration: null },
});

/** Sums on paper. */
export const setTotalsWorked: Reference<Input, Totals> = {
  key: 'set-totals-worked',
  title: 'Totals of sets, added up on paper',
  source: 'Added up from the send-offs.',
  standing: 'worked',
  rows: [
    row('10 x 100 on 1:30', 1000, '15:00', '13:30'),
    row('2x(4x50 on :45, 50 on 1:00)', 500, '8:00', '7:00'),
    {
      place: '10 x 100 on 1:30 at 1:07 per 100: 13:30 and 1:07',
      input: { set: '10 x 100 on 1:30', pace: '1:07.00' },
      published: { distance: 1000, booked: '15:00', lastDeparture: '13:30', duration: '14:37' },
    },
  ],
  compute: totalsOf,
};

export function totalsOf({ set, pace }: Input): Totals {
  const { distance, booked, duration, clock } = setTotals(
    parseSet(set),
    pace === undefined ? {} : { pace: parseTime(pace) },
  );
  const shown = (time: typeof booked) => time && formatTime(time, { decimals: 0 });
  return {
    distance,
    booked: shown(booked) ?? '',
    lastDeparture: shown(clock.at(-1)?.start ?? null) ?? '',
    duration: shown(duration),
  };
}
