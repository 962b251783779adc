import { type Caution, cautionsWhere } from '../caution.js';
import type { Conversion } from './conversion.js';

/** What to know before trusting a converted time. */
export function conversionCautions({
  method,
  time,
  range,
}: Pick<Conversion, 'method' | 'time' | 'range'>): readonly Caution[] {
  return cautionsWhere(
    [
      true,
      'converted-time',
      'A converted time serves entry and comparison; no federation counts it as swum.',
    ],
    [
      method === 'collegiate-2023-24',
      'rounding-assumed',
      'The report of these factors says to multiply; that the third decimal is dropped is carried over from the 2021–22 table.',
    ],
    [
      method === 'turns',
      'gain-varies',
      'What turns gain differs between swimmers as much as between pools; try more than one gain.',
    ],
    [range === null, 'no-range', 'How far such a conversion is off, nobody has published.'],
    [
      range !== null && (time < range.low || time > range.high),
      'outside-published-range',
      'The converted time lies outside what studies measured between these pools.',
    ],
  );
}
