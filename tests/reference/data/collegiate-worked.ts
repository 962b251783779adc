import {
  convertTime,
  formatTime,
  LCM,
  type Pool,
  parseTime,
  SCM,
  SCY,
  type Sex,
  type Stroke,
} from 'backhalf';
import type { Reference } from '../reference.js';

interface Input {
  readonly time: string;
  readonly distance: number;
  readonly stroke: Stroke;
  readonly sex?: Sex;
  readonly from: Pool;
  readonly to: Pool;
}

const from25 = (time: string, distance: number, stroke: Stroke, published: string) => ({
  place: `25 m, ${distance} ${stroke}`,
  input: { time, distance, stroke, from: SCM, to: SCY },
  published,
});
const from50 = (sex: Sex, time: string, distance: number, stroke: Stroke, published: string) => ({
  place: `50 m, ${sex} ${distance} ${stroke}`,
  input: { time, distance, stroke, sex, from: LCM, to: SCY },
  published,
});
const to50 = (sex: Sex, time: string, distance: number, published: string) => ({
  place: `slowest 50 m time for ${sex} ${distance} yd in ${time}`,
  input: { time, distance, stroke: 'free' as const, sex, from: SCY, to: LCM },
  published,
});

/** Products on paper, the third decimal dropped; the way back tried a hundredth at a time. */
export const collegiateWorked: Reference<Input, string> = {
  key: 'collegiate-worked',
  title: 'Collegiate conversions worked on paper',
  source: 'Worked from the published factors.',
  standing: 'worked',
  rows: [
    from25('48.99', 100, 'free', '44.38'),
    from25('22.07', 50, 'free', '19.99'),
    from25('2:02.35', 200, 'back', '1:50.84'),
    from25('3:39.15', 400, 'free', '4:12.67'),
    from25('7:48.02', 800, 'free', '8:59.62'),
    from25('14:08.06', 1500, 'free', '14:19.08'),
    from50('W', '3:56.46', 400, 'free', '4:25.30'),
    from50('W', '8:04.79', 800, 'free', '9:07.81'),
    from50('W', '15:20.48', 1500, 'free', '15:06.67'),
    from50('M', '14:31.02', 1500, 'free', '14:09.24'),
    from50('M', '16:46.60', 1500, 'free', '16:21.43'),
    from50('M', '1:45.35', 200, 'free', '1:32.18'),
    from50('W', '58.45', 100, 'back', '50.44'),
    from50('M', '52.05', 100, 'fly', '45.69'),
    from50('M', '2:00.04', 200, 'medley', '1:44.07'),
    to50('W', '22.15', 50, '25.15'),
    to50('M', '14:37.31', 1650, '14:59.81'),
  ],
  compute: ({ time, to, ...swim }) =>
    formatTime(convertTime({ ...swim, time: parseTime(time) }, to).time),
};
