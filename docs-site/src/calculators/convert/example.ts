import type { ConvertFields } from './fields';

/** Ivo Tarn's 1500 of the invented club Saltmarsh, swum in a 50 m pool, for a meet in yards. */
export const ivo: ConvertFields = {
  what: 'time',
  'from-pool': '50m',
  'from-length': '',
  'from-unit': 'm',
  'to-pool': '25yd',
  'to-length': '',
  'to-unit': 'yd',
  stroke: 'free',
  sex: 'M',
  distance: '1500',
  time: '16:51.40',
  pace: '1:08.5',
  'send-off': '1:40',
  rep: '100',
  round: 'up',
  stretch: '3000',
  gain: 'club-handbook',
  own: '0.60',
  'from-base': '',
  'to-base': '',
};
