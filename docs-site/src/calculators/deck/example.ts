import { formatTime, hundredths, parseTime } from 'backhalf';
import type { DeckFields } from './fields';
import { type Tap, tapsText } from './touches-text';

const clock = { sendOff: '1:50', stagger: '0:05' };
const sendOff = parseTime(clock.sendOff);
const stagger = parseTime(clock.stagger);
const reps = 4;

/** Four of the invented club Saltmarsh, in the order in which they leave. */
const lane = [
  { name: 'Mara Quill', repTime: parseTime('1:05') },
  { name: 'Ivo Tarn', repTime: parseTime('1:08') },
  { name: 'Bea Loxley', repTime: parseTime('1:10') },
  { name: 'Jun Marlow', repTime: parseTime('1:13') },
];

/** How far each rep is off the time expected, in thousandths: steady, fading, faster each time, uneven. */
const drift = [
  [-4, 2, 3, 6],
  [0, 14, 26, 50],
  [4, -8, -20, -45],
  [10, -6, 12, -9],
];

/** The thumb’s touches of that set: one was forgotten, one came twice, and two came in together. */
const taps: readonly Tap[] = lane
  .flatMap(({ repTime }, swimmer) =>
    Array.from({ length: reps }, (_, rep) => {
      const start = swimmer * stagger + rep * sendOff;
      const time = repTime * (1 + (drift[swimmer]?.[rep] ?? 0) / 1000);
      const halfway = time * (0.484 + 0.001 * ((swimmer + rep) % 3));
      return [start + halfway, start + time];
    }),
  )
  .flat()
  .map((time) => Math.round(time))
  .sort((a, b) => a - b)
  .filter((_, i) => i !== 13)
  .flatMap((time, i) => (i === 6 ? [time, time + 31] : [time]))
  .map((time) => ({ time: hundredths(time) }));

export const saltmarsh: DeckFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  swimmers: lane
    .map(({ name, repTime }) => `${name} ${formatTime(repTime, { decimals: 0 })}`)
    .join('\n'),
  reps: String(reps),
  distance: '100',
  'send-off': clock.sendOff,
  stagger: clock.stagger,
  marks: 'halfway-and-finish',
  buttons: 'one',
  phase: 'over',
  started: '',
  touches: tapsText(taps),
};
