import type { Reference } from '../reference.js';
import { type Event, row, secondsAdded } from './turns-club.js';

export const turnsCommittee: Reference<Event, number> = {
  key: 'turns-committee',
  title: 'Seconds for the missing turns, from 25 yd × 1.1',
  source: 'Local swimming committee, San Diego–Imperial, as quoted by another text.',
  standing: 'quoted',
  rows: [row('free', 50, 1), row('free', 100, 2), row('free', 200, 4), row('medley', 400, 8)],
  compute: (event) => secondsAdded('committee-handbook', event),
};
