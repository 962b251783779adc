import { groupLanes, hundredths, type LaneObjective } from 'backhalf';
import type { Reference } from '../reference.js';

interface Squad {
  readonly paces: readonly number[];
  readonly lanes: number;
  readonly maxPerLane?: number;
  readonly objective: LaneObjective;
}

interface Optimum {
  readonly cost: number;
  /** How many swimmers each lane has. */
  readonly sizes: readonly number[];
}

const eight = [6200, 6300, 6350, 6700, 6800, 7200, 7250, 7900];
const nine = [5900, 6000, 6100, 6150, 6600, 6650, 6700, 7400, 7500];
const six = [6000, 6010, 6020, 6500, 6510, 7000];
const OBJECTIVES = [
  'largest-spread',
  'sum-of-spreads',
  'total-wait',
  'least-squares',
] as const satisfies readonly LaneObjective[];

/** The four objectives, each with its least value and the sizes of its lanes. */
const squad = (
  place: string,
  input: Omit<Squad, 'objective'>,
  optima: readonly (readonly [cost: number, ...sizes: number[]])[],
) =>
  OBJECTIVES.map((objective, i) => {
    const [cost = 0, ...sizes] = optima[i] ?? [];
    return {
      place: `${place}: ${objective}`,
      input: { ...input, objective },
      published: { cost, sizes },
    };
  });

/** Paces in hundredths per 100; the objectives disagree. */
export const laneGroupsWorked: Reference<Squad, Optimum> = {
  key: 'lane-groups-worked',
  title: 'The best lanes for a squad, by four objectives',
  source: 'Every assignment of swimmers to lanes tried; paces made up',
  standing: 'worked',
  rows: [
    ...squad('eight swimmers, three lanes', { paces: eight, lanes: 3 }, [
      [500, 4, 3, 1],
      [650, 5, 2, 1],
      [1250, 3, 4, 1],
      [243_541.6667, 3, 4, 1],
    ]),
    ...squad('the same, at most three in a lane', { paces: eight, lanes: 3, maxPerLane: 3 }, [
      [650, 3, 3, 2],
      [950, 3, 2, 3],
      [1650, 3, 2, 3],
      [321_666.6667, 3, 2, 3],
    ]),
    ...squad('nine swimmers, three lanes of four', { paces: nine, lanes: 3, maxPerLane: 4 }, [
      [250, 4, 3, 2],
      [450, 4, 3, 2],
      [700, 4, 3, 2],
      [46_875, 4, 3, 2],
    ]),
    ...squad('a cap that forces bad lanes', { paces: six, lanes: 3, maxPerLane: 2 }, [
      [490, 2, 2, 2],
      [980, 2, 2, 2],
      [980, 2, 2, 2],
      [235_300, 2, 2, 2],
    ]),
  ],
  compute: ({ paces, ...options }) => {
    const swimmers = paces.map((pace, i) => ({ name: `${i + 1}`, pace: hundredths(pace) }));
    const { cost, lanes } = groupLanes(swimmers, options);
    return { cost, sizes: lanes.map((lane) => lane.swimmers.length) };
  },
  tolerance: 0.0001,
};
