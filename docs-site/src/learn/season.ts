import { fromSeconds, type Hundredths, type Splits, splitsFromLaps } from 'backhalf';
import type { BrokenFields } from '~/calculators/broken-swim/model';
import type { CriticalFields } from '~/calculators/critical-speed/fields';
import type { HalvesFields } from '~/calculators/halves/model';
import type { PlanFields } from '~/calculators/plan-a-race/fields';
import type { SetFields } from '~/calculators/read-a-set/model';

// One season at Saltmarsh, a club that does not exist. Times are seconds as a coach writes them.

const pool = { pool: '25m', length: '', unit: 'm' } as const;

const setOf = (reps: readonly string[]): SetFields => ({
  ...pool,
  distance: '100',
  kind: 'halves',
  reps: reps.join('\n'),
  known: 'sendOff',
  rest: '1:30',
  race: '1500',
});

/** A halves-by-line text as swims. */
export const swimsOf = (lines: string): readonly Splits[] =>
  lines.split('\n').map((line) => {
    const laps = line.split(' ').map((time): Hundredths => fromSeconds(Number(time)));
    return splitsFromLaps(50, laps);
  });

/** September: Ivo Tarn goes out hard and hangs on. */
export const ivoSeptember = setOf([
  '31.2 33.6',
  '31.3 33.5',
  '31.4 33.7',
  '31.3 33.8',
  '31.5 33.4',
  '31.6 33.5',
  '31.4 33.6',
  '31.5 33.7',
  '31.6 33.4',
  '31.5 33.5',
  '31.6 33.3',
  '31.5 33.6',
  '31.7 33.5',
  '31.6 33.4',
  '31.5 33.5',
  '31.6 33.4',
  '31.7 33.3',
  '31.6 33.5',
  '31.5 33.3',
  '31.4 33.0',
]);

/** September, the same morning: Bea Loxley, with the same mean rep to the hundredth. */
export const beaSeptember = setOf([
  '32.2 32.6',
  '32.3 32.5',
  '32.3 32.7',
  '32.3 32.8',
  '32.4 32.5',
  '32.3 32.7',
  '32.3 32.7',
  '32.4 32.8',
  '32.3 32.6',
  '32.3 32.7',
  '32.4 32.5',
  '32.3 32.8',
  '32.4 32.8',
  '32.3 32.7',
  '32.3 32.7',
  '32.3 32.7',
  '32.3 32.8',
  '32.4 32.7',
  '32.3 32.6',
  '32.0 32.5',
]);

/** November: the set after four weeks of target halves. */
export const ivoNovember = setOf([
  '32.0 33.0',
  '32.1 32.9',
  '32.1 33.0',
  '32.0 33.1',
  '32.1 33.0',
  '32.2 32.9',
  '32.1 33.0',
  '32.1 33.1',
  '32.2 32.9',
  '32.1 33.0',
  '32.1 32.9',
  '32.0 33.0',
  '32.2 33.0',
  '32.1 32.9',
  '32.1 33.0',
  '32.1 33.1',
  '32.2 32.9',
  '32.1 33.0',
  '32.0 32.9',
  '31.8 32.6',
]);

/** October: Ivo's broken 400, four 100s on 10 s. */
export const ivoBroken: BrokenFields = {
  ...pool,
  distance: '100',
  kind: 'halves',
  pieces: ['29.8 31.6', '30.1 31.9', '30.3 32.2', '30.0 31.9'].join('\n'),
  known: 'rest',
  rest: '10',
  race: '',
  reserve: '',
  tau: '',
};

/** The whole 400 that he swam a week later, in the same pool. */
export const ivoFour = ['29.6', '31.2', '31.6', '31.9', '32.1', '32.2', '32.0', '31.0'];

const swim = (times: readonly string[], start: string): HalvesFields => ({
  pool: '50m',
  length: '',
  unit: 'm',
  every: '1',
  kind: 'laps',
  start,
  times: times.join('\n'),
});

/** October: Mara Quill's 200 in the morning, and at night. */
export const maraMorning = swim(['29.10', '32.05', '33.40', '33.95'], 'dive');
export const maraNight = swim(['30.20', '32.30', '32.85', '33.05'], 'dive');

/** November: Ada Wren's trials, a week apart. */
export const adaTrials = [
  { distance: 200, text: '2:19.6' },
  { distance: 400, text: '4:53.2' },
  { distance: 800, text: '10:07.5' },
] as const;

/** The same trials as the calculator takes them. */
export const adaFit: CriticalFields = {
  ...pool,
  trials: adaTrials.map(({ distance, text }) => `${distance} ${text}`).join('\n'),
  race: '1500',
  set: '',
  pace: '',
  tau: '',
};

/** January: what Ivo swam over 1500, by the hundred. */
export const ivoRace = [
  '1:03.9',
  '1:05.8',
  '1:06.2',
  '1:06.3',
  '1:06.4',
  '1:06.5',
  '1:06.6',
  '1:06.8',
  '1:06.7',
  '1:06.8',
  '1:06.9',
  '1:06.8',
  '1:06.6',
  '1:06.2',
  '1:04.4',
];

/** January: the plan for that 1500, its second half two seconds faster. */
export const ivoPlan: PlanFields = {
  ...pool,
  pool: '50m',
  distance: '1500',
  goal: '16:37.00',
  shape: 'halves',
  way: 'faster',
  gap: '2.0',
  credit: '',
  lift: '',
  every: '2',
  own: '',
  ownEvery: '1',
  ownKind: 'laps',
  swum: '',
  swumEvery: '2',
  swumKind: 'laps',
};

/** The same plan with the race beside it. */
export const ivoPlanSwum: PlanFields = { ...ivoPlan, swum: ivoRace.join('\n') };
