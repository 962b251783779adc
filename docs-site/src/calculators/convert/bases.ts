import {
  formatTime,
  type Hundredths,
  type Pool,
  points,
  type TimeWindow,
  timeForPoints,
} from 'backhalf';
import type { Figured } from '~/ui/ResultCard';
import { readTimeText } from '~/ui/time-text';
import type { ConvertFields } from './fields';

interface Bases {
  readonly errors: { readonly 'from-base': string | null; readonly 'to-base': string | null };
  /** The time in the new pool that is worth as much; none where no base time was typed. */
  readonly worth: ((time: Hundredths) => Figured) | null;
}

/** Points are kept for pools in metres only. */
export const hasPoints = (from: Pool, to: Pool): boolean => from.unit === 'm' && to.unit === 'm';

/** The base times of both pools, in the points table of one year. */
export function readBases(fields: ConvertFields, within: TimeWindow, asked: boolean): Bases {
  const none = { 'from-base': null, 'to-base': null };
  if (!asked || `${fields['from-base']}${fields['to-base']}`.trim() === '') {
    return { errors: none, worth: null };
  }
  const here = readTimeText(fields['from-base'], 'Base time in the old pool', within);
  const there = readTimeText(fields['to-base'], 'Base time in the new pool', within);
  const [from, to] = [here.time, there.time];
  if (from === null || to === null) {
    return { errors: { 'from-base': here.error, 'to-base': there.error }, worth: null };
  }
  const worth = (time: Hundredths): Figured => {
    const scored = points(time, from);
    return {
      label: 'Worth the same points',
      figure: formatTime(timeForPoints(scored, to)),
      note: `${scored} points against the base times typed`,
    };
  };
  return { errors: none, worth };
}
