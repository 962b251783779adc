import { convertPace, type Pool } from 'backhalf';
import { plausibleTimes } from '~/ui/plausible';
import { readTimeText } from '~/ui/time-text';
import { type Outcome, refused } from './answer';
import { byGains } from './by-gains';
import type { ConvertFields } from './fields';

/** Converts a pace per 100. */
export function convertPaceText(fields: ConvertFields, from: Pool, to: Pool): Outcome {
  const { time: given, error } = readTimeText(fields.pace, 'Pace', plausibleTimes(100));
  if (given === null) return refused('pace', error ?? '');
  return byGains(fields, {
    name: 'pace per 100',
    given,
    from,
    to,
    convert: (gain) => ({ time: convertPace(given, from, to, gain) }),
    field: 'pace',
  });
}
