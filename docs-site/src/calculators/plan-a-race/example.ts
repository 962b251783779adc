import type { PlanFields } from './fields';

/** Mara Quill's next 400 for the invented club Saltmarsh: home three seconds faster than out. */
export const nextFinal: PlanFields = {
  pool: '50m',
  length: '',
  unit: 'm',
  distance: '400',
  goal: '4:26.00',
  shape: 'halves',
  way: 'faster',
  gap: '3.0',
  credit: '',
  lift: '',
  every: '1',
  own: '',
  ownEvery: '1',
  ownKind: 'laps',
  swum: '',
  swumEvery: '1',
  swumKind: 'laps',
};

/** The same plan after the race, with the splits that were swum. */
export const finalSwum: PlanFields = {
  ...nextFinal,
  swum: '31.10\n33.90\n34.20\n34.30\n33.60\n33.40\n33.10\n32.20',
};
