import type { CriticalFields } from './fields';

/** Oona Price's trials for the invented club Saltmarsh, a week apart, and a set she is to swim next. */
export const oonaTrials: CriticalFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  trials: ['200 2:17.4', '400 4:49.6', '800 9:57.8'].join('\n'),
  race: '1500',
  set: '12 x 100 in 1:11 on 1:20',
  pace: '',
  tau: '300',
};
