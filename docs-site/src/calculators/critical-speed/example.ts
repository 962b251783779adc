import type { CriticalFields } from './fields';

/** Oona Price's trials for the invented club Saltmarsh, a week apart. */
export const oonaTrials: CriticalFields = {
  pool: '25m',
  length: '',
  unit: 'm',
  trials: ['200 2:17.4', '400 4:49.6', '800 9:57.8'].join('\n'),
  race: '1500',
  set: '',
  pace: '',
  tau: '',
};

/** The same with the set she is to swim next, which the page opens without: it is fetched apart. */
export const oonaThroughSet: CriticalFields = {
  ...oonaTrials,
  set: '12 x 100 in 1:11 on 1:20',
  tau: '300',
};
