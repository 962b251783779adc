import { formatTime, parseTime, setDuration } from 'backhalf';
import type { Reference } from '../reference.js';

interface Set {
  readonly sendOff: string;
  readonly reps: number;
  readonly swim: string;
}

/** How long a set takes: the last swim is no send-off long, the booked time is. */
export const setDurationWorked: Reference<
  Set,
  { readonly lastDeparture: string; readonly finished: string; readonly booked: string }
> = {
  key: 'set-duration-worked',
  title: 'How long a set takes',
  source: 'Arithmetic: reps less one send-offs to the last departure, all of them booked',
  standing: 'worked',
  rows: [
    {
      place: '10 × 100 on 1:30',
      input: { sendOff: '1:30.00', reps: 10, swim: '1:07.00' },
      published: { lastDeparture: '13:30', finished: '14:37', booked: '15:00' },
    },
    {
      place: '4 × 50 on 0:45',
      input: { sendOff: '45.00', reps: 4, swim: '33.00' },
      published: { lastDeparture: '2:15', finished: '2:48', booked: '3:00' },
    },
  ],
  compute: ({ sendOff, reps, swim }) => {
    const set = setDuration({ sendOff: parseTime(sendOff), reps, swim: parseTime(swim) });
    const text = (time: typeof set.finished) => (time ? formatTime(time, { decimals: 0 }) : '');
    return {
      lastDeparture: text(set.lastDeparture),
      finished: text(set.finished),
      booked: text(set.booked),
    };
  },
};
