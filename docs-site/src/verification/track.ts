import type { TrackRecordRow } from 'backhalf';
import { signedPercent } from '~/ui/wording';

export const percent = signedPercent;

/** A row's method and distances in a few words. */
export const nameOf = ({ method, exponent, from, to }: TrackRecordRow): string =>
  `${from.join(' + ')} → ${to}, ${method === 'critical-speed' ? 'critical speed' : exponent === null ? 'power law' : `exponent ${exponent}`}`;

/** The record as a table: figures as text, units in the headings. */
export const trackRows = (rows: readonly TrackRecordRow[]) => ({
  columns: [
    'From and to (m), method',
    'Swims',
    'Bias (%)',
    'Spread (%)',
    'In the range of 90 % (%)',
  ],
  rows: rows.map((row) => ({
    head: nameOf(row),
    cells: [
      `${row.swims} ${row.who}`,
      percent(row.bias),
      (100 * row.spread).toFixed(1),
      ((100 * row.covered) / row.swims).toFixed(0),
    ],
  })),
});
