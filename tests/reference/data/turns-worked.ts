import {
  convertTime,
  formatTime,
  LCM,
  type Pool,
  parseTime,
  SCY,
  type Stroke,
  TURN_GAINS,
} from 'backhalf';
import type { Reference } from '../reference.js';

interface Input {
  readonly handbook: string;
  readonly time: string;
  readonly distance: number;
  readonly stroke: Stroke;
  readonly from: Pool;
  readonly to: Pool;
}

const row = (
  handbook: string,
  time: string,
  [distance, stroke]: readonly [number, Stroke],
  published: string,
) => ({
  place: `${handbook}, ${distance} yd ${stroke} in ${time}`,
  input: { handbook, time, distance, stroke, from: SCY, to: LCM },
  published,
});

export const turnsWorked: Reference<Input, string> = {
  key: 'turns-worked',
  title: 'Conversions by turns worked on paper, 25 yd to 50 m and a mile back',
  source: 'Worked from the rules of the two handbooks.',
  standing: 'worked',
  rows: [
    row('club-handbook', '1:00.00', [100, 'free'], '1:08.20'),
    row('club-handbook', '58.37', [100, 'fly'], '1:06.19'),
    row('club-handbook', '2:12.00', [200, 'free'], '2:29.72'),
    row('club-handbook', '1:05.00', [100, 'back'], '1:13.35'),
    row('club-handbook', '4:45.00', [400, 'medley'], '5:22.75'),
    row('committee-handbook', '30.00', [50, 'free'], '34.00'),
    row('committee-handbook', '1:00.00', [100, 'free'], '1:08.00'),
    row('committee-handbook', '2:10.00', [200, 'free'], '2:27.00'),
    {
      // The committee takes 30 s off: 1.1 × 1500 / 1650 is 1, and there are 30 turns more.
      place: 'committee-handbook, 1500 m in 16:46.60 to 1650 yd',
      input: {
        handbook: 'committee-handbook',
        time: '16:46.60',
        distance: 1500,
        stroke: 'free',
        from: LCM,
        to: SCY,
      },
      published: '16:16.60',
    },
  ],
  compute({ handbook, time, to, ...swim }) {
    const { gains, yardRatio } = TURN_GAINS.find(({ key }) => key === handbook)!;
    const options = { gainPerTurn: gains[swim.stroke]!, yardRatio: yardRatio! };
    return formatTime(convertTime({ ...swim, time: parseTime(time) }, to, options).time);
  },
};
