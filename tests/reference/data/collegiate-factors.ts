import { convertTime, hundredths, LCM, SCM, SCY, type Sex, type Stroke } from 'backhalf';
import type { Reference } from '../reference.js';

/** An event swum in the metre pool of the table. */
interface Event {
  readonly metrePool: 25 | 50;
  readonly metres: number;
  readonly stroke: Stroke;
  readonly sex?: Sex;
}

/** What the event is multiplied by, and the yards it then is. */
interface Factor {
  readonly factor: number;
  readonly yards: number;
}

const short = (stroke: Stroke, metres: number, yards: number, factor: number) => ({
  place: `2021–22, ${metres} m ${stroke} to ${yards} yd`,
  input: { metrePool: 25, metres, stroke } as Event,
  published: { factor, yards },
});
const long = (stroke: Stroke, metres: number, yards: number, women: number, men: number) =>
  (
    [
      ['W', women],
      ['M', men],
    ] as const
  ).map(([sex, factor]) => ({
    place: `2023–24, ${sex} ${metres} m ${stroke} to ${yards} yd`,
    input: { metrePool: 50, metres, stroke, sex } as Event,
    published: { factor, yards },
  }));

export const collegiateFactors: Reference<Event, Factor> = {
  key: 'collegiate-factors',
  title: 'Collegiate conversion factors to 25 yd',
  source:
    'US collegiate qualifying standards (Division I): 25 m, season 2021–22, and 50 m, season 2023–24, as quoted by news reports of 2021 and 2023.',
  standing: 'quoted',
  rows: [
    short('free', 400, 500, 1.153),
    short('free', 800, 1000, 1.153),
    short('free', 1500, 1650, 1.013),
    ...[50, 100, 200].map((metres) => short('free', metres, metres, 0.906)),
    ...[100, 200].flatMap((metres) =>
      (['back', 'breast', 'fly'] as const).map((stroke) => short(stroke, metres, metres, 0.906)),
    ),
    ...[200, 400].map((metres) => short('medley', metres, metres, 0.906)),
    ...long('free', 50, 50, 0.881, 0.87),
    ...long('free', 100, 100, 0.884, 0.873),
    ...long('free', 200, 200, 0.884, 0.875),
    ...long('free', 400, 500, 1.122, 1.115),
    ...long('free', 800, 1000, 1.13, 1.115),
    ...long('free', 1500, 1650, 0.985, 0.975),
    ...long('back', 100, 100, 0.863, 0.845),
    ...long('back', 200, 200, 0.867, 0.859),
    ...long('breast', 100, 100, 0.88, 0.866),
    ...long('breast', 200, 200, 0.888, 0.868),
    ...long('fly', 100, 100, 0.887, 0.878),
    ...long('fly', 200, 200, 0.891, 0.876),
    ...long('medley', 200, 200, 0.877, 0.867),
    ...long('medley', 400, 400, 0.886, 0.875),
  ],
  compute({ metrePool, metres, stroke, sex }) {
    const swim = {
      time: hundredths(10_000),
      distance: metres,
      stroke,
      from: metrePool === 25 ? SCM : LCM,
      ...(sex !== undefined && { sex }),
    };
    const { factor, distance } = convertTime(swim, SCY);
    return { factor, yards: distance };
  },
};
