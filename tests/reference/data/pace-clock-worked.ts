import { clockReadings, hundredths, parseTime, toSeconds } from 'backhalf';
import type { Reference } from '../reference.js';

interface Lane {
  readonly sendOff: string;
  readonly reps: number;
  readonly swimmers: number;
}

/** A lane of three five seconds apart, and how many different marks a send-off leaves from. */
export const paceClockWorked: Reference<
  Lane,
  { readonly marks: number; readonly lane: readonly (readonly number[])[] }
> = {
  key: 'pace-clock-worked',
  title: 'A lane at the pace clock',
  source: 'Arithmetic: start + rep × send-off + swimmer × 5 s, round the clock of 60 s',
  standing: 'worked',
  rows: [
    {
      place: 'three swimmers on 1:40',
      input: { sendOff: '1:40.00', reps: 4, swimmers: 3 },
      published: {
        marks: 3,
        lane: [
          [0, 40, 20, 0],
          [5, 45, 25, 5],
          [10, 50, 30, 10],
        ],
      },
    },
    ...(
      [
        ['1:00.00', 1, [0, 0]],
        ['1:30.00', 2, [0, 30]],
        ['1:20.00', 3, [0, 20]],
        ['40.00', 3, [0, 40]],
        ['45.00', 4, [0, 45]],
        ['1:15.00', 4, [0, 15]],
        ['1:10.00', 6, [0, 10]],
        ['50.00', 6, [0, 50]],
        ['55.00', 12, [0, 55]],
      ] as const
    ).map(([sendOff, marks, row]) => ({
      place: `${sendOff}: 60 over the greatest common divisor with 60 is ${marks}`,
      input: { sendOff, reps: 2, swimmers: 1 },
      published: { marks, lane: [row] },
    })),
  ],
  compute: ({ sendOff, reps, swimmers }) => {
    const on = (count: number) =>
      clockReadings(hundredths(0), { sendOff: parseTime(sendOff), reps: count, swimmers });
    return {
      marks: new Set(on(60)[0]).size,
      lane: on(reps).map((row) => row.map(toSeconds)),
    };
  },
};
