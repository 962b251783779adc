import { formatTime, parseTime, restOn, sendOffFor } from 'backhalf';
import type { Reference } from '../reference.js';

interface Wanted {
  readonly swim: string;
  readonly rest: string;
}

/** Send-offs in steps of five seconds, which is how pace clocks are marked. */
export const sendOffsWorked: Reference<
  Wanted,
  { readonly up: string; readonly nearest: string; readonly rest: string }
> = {
  key: 'send-offs-worked',
  title: 'Send-offs from swim and wanted rest',
  source:
    'Arithmetic: swim + rest, rounded to 5 s; the rest is what the send-off rounded up leaves',
  standing: 'worked',
  rows: [
    {
      place: 'exactly 1:27.00',
      input: { swim: '1:07.00', rest: '20.00' },
      published: { up: '1:30', nearest: '1:25', rest: '23.00' },
    },
    {
      place: 'exactly 1:25.00',
      input: { swim: '1:05.00', rest: '20.00' },
      published: { up: '1:25', nearest: '1:25', rest: '20.00' },
    },
    {
      place: 'exactly 0:48.40',
      input: { swim: '33.40', rest: '15.00' },
      published: { up: '50', nearest: '50', rest: '16.60' },
    },
    {
      place: 'exactly 2:52.10',
      input: { swim: '2:22.10', rest: '30.00' },
      published: { up: '2:55', nearest: '2:50', rest: '32.90' },
    },
    {
      place: 'exactly 1:25.01: one hundredth costs five seconds',
      input: { swim: '1:05.01', rest: '20.00' },
      published: { up: '1:30', nearest: '1:25', rest: '24.99' },
    },
  ],
  compute: (wanted) => {
    const swim = parseTime(wanted.swim);
    const rest = parseTime(wanted.rest);
    const up = sendOffFor(swim, { rest });
    const nearest = sendOffFor(swim, { rest, round: 'nearest' });
    return {
      up: formatTime(up, { decimals: 0 }),
      nearest: formatTime(nearest, { decimals: 0 }),
      rest: formatTime(restOn(up, swim)),
    };
  },
};
