import { convertTime, hundredths, LCM, SCY, type Stroke, TURN_GAINS } from 'backhalf';
import type { Reference } from '../reference.js';

/** An event from 25 yd to 50 m. */
export interface Event {
  readonly stroke: Stroke;
  readonly yards: number;
}

/** Seconds the handbook adds after multiplying, here read off a converted time of 100.00. */
export function secondsAdded(key: string, { stroke, yards }: Event): number {
  const { gains, yardRatio } = TURN_GAINS.find((each) => each.key === key)!;
  const swim = { time: hundredths(10_000), distance: yards, stroke, from: SCY };
  const options = { gainPerTurn: gains[stroke]!, yardRatio: yardRatio! };
  const { time, factor } = convertTime(swim, LCM, options);
  return Math.round(time - 10_000 * factor) / 100;
}

export const row = (stroke: Stroke, yards: number, published: number) => ({
  place: `${yards} yd ${stroke} to a 50 m pool`,
  input: { stroke, yards },
  published,
});

export const turnsClub: Reference<Event, number> = {
  key: 'turns-club',
  title: 'Seconds for the missing turns, from 25 yd × 1.11',
  source: 'A US club’s handbook, page for parents.',
  standing: 'read',
  rows: [
    ...[50, 100, 200].flatMap((yards, i) => [
      row('free', yards, [0.8, 1.6, 3.2][i]!),
      row('fly', yards, [0.7, 1.4, 2.8][i]!),
      row('back', yards, [0.6, 1.2, 2.4][i]!),
      row('breast', yards, [1, 2, 4][i]!),
    ]),
    row('medley', 200, 3.2),
    row('medley', 400, 6.4),
  ],
  compute: (event) => secondsAdded('club-handbook', event),
};
