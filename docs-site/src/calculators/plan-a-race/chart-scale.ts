import type { Mark, RacePlan } from 'backhalf';

/** A lap as drawn: from where to where, and how far off the goal's mean pace, a ratio. */
export interface Step {
  readonly from: number;
  readonly to: number;
  readonly off: number;
}

/** The laps between marks against the mean pace of the plan. */
export function stepsOf(marks: readonly Mark[], { distance, goal }: RacePlan): readonly Step[] {
  return marks.map((mark, i) => {
    const before = marks[i - 1] ?? { distance: 0, time: 0 };
    const even = (goal * (mark.distance - before.distance)) / distance;
    return {
      from: before.distance,
      to: mark.distance,
      off: (mark.time - before.time) / even - 1,
    };
  });
}

/** The scale of the chart: alike above and below the mean, so that there is room to drag both ways. */
export interface Scale {
  /** From the mean to the edge, a ratio. */
  readonly limit: number;
  readonly ticks: readonly number[];
}

const sizes = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10];
const room = 1.2;
const mostTicks = 3; // on each side of the mean

export function scaleOf(steps: readonly Step[]): Scale {
  const farthest = steps.reduce((most, { off }) => Math.max(most, Math.abs(off)), 0.01) * room;
  const size = sizes.find((it) => it * mostTicks >= farthest) ?? farthest;
  const count = Math.ceil(farthest / size);
  return {
    limit: count * size,
    ticks: Array.from({ length: 2 * count + 1 }, (_, i) => (i - count) * size),
  };
}
