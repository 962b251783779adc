import { convertPace, convertSendOff, hundredths, type Pool, type SendOffOptions } from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readTimeText } from '~/ui/time-text';
import { distanceText } from '~/ui/wording';
import { type Outcome, problemsOf } from './answer';
import { byGains } from './by-gains';
import type { ConvertFields } from './fields';

/** The send-offs that make sense for a rep: up to twice the slowest swim. */
export function sendOffWindow(rep: number) {
  const { from, to } = plausibleTimes(rep);
  return { from, to: hundredths(2 * to) };
}

/** Converts a send-off, and rounds it for the pace clock. */
export function convertSendOffText(fields: ConvertFields, from: Pool, to: Pool): Outcome {
  const { count: rep, error } = readCountText(fields.rep, 'Rep distance', {
    least: 10,
    most: 5000,
  });
  const sendOff = readTimeText(fields['send-off'], 'Send-off', sendOffWindow(rep ?? 100));
  const given = sendOff.time;
  if (rep === null || given === null) {
    return { problems: problemsOf({ rep: error, 'send-off': sendOff.error }) };
  }
  const round = fields.round as NonNullable<SendOffOptions['round']>;
  return byGains(fields, {
    name: `send-off for ${distanceText(rep)}`,
    given,
    from,
    to,
    convert: (gain) => ({
      time: convertSendOff(given, from, to, { ...gain, repDistance: rep, round }),
      exact: convertPace(given, from, to, { ...gain, per: rep }),
    }),
    field: 'rep',
  });
}
