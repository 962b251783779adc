import { formatTime } from 'backhalf';
import { markLaps } from '~/brand/swim';
import type { HalvesFields } from './model';

/** Mara Quill's 400 of the site's mark: held back early, and home faster than out. */
export const heat: HalvesFields = {
  pool: '50m',
  length: '',
  unit: 'm',
  every: '1',
  kind: 'laps',
  start: 'dive',
  times: markLaps.map((lap) => formatTime(lap)).join('\n'),
};
