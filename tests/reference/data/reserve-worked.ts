import { parseSet, type Recovery, reserveThrough } from 'backhalf';
import type { Reference } from '../reference.js';

interface Input {
  readonly set: string;
  readonly recovery: Recovery;
  /** Speed in the rests, in metres per second. */
  readonly restSpeed?: number;
}

/** Metres left after each of the first swims, and after their rests; the swim in which it runs out. */
interface Balance {
  readonly afterSwim: readonly number[];
  readonly afterRest: readonly number[];
  readonly runsOutIn: number | null;
}

const differential: Recovery = { form: 'differential' };
const tenOn120 = '10 x 100 in 1:12 on 1:20';

/** A reserve of 20 m over 1.30 m/s through sets, by each published form's equation, worked by hand. */
export const reserveWorked: Reference<Input, Balance> = {
  key: 'reserve-worked',
  title: 'The reserve through a set, by three forms of recovery',
  source:
    'Equations of Morton and Billat 2004, Skiba et al. 2012, Skiba and Clarke 2021 as quoted elsewhere; numbers worked by hand',
  standing: 'worked',
  rows: [
    {
      place: '10 × 100 in 1:12 on 1:20, differential',
      input: { set: tenOn120, recovery: differential },
      published: {
        afterSwim: [13.6, 9.795068, 7.532959, 6.188088, 5.388534],
        afterRest: [16.195068, 13.932959, 12.588088, 11.788534, 11.313183],
        runsOutIn: null,
      },
    },
    {
      place: 'the same, integral with a time constant of 300 s',
      input: { set: tenOn120, recovery: { form: 'integral', tau: 300 } },
      published: {
        afterSwim: [14.310076, 9.952002, 6.61403, 4.057383, 2.099174],
        afterRest: [14.459802, 10.216408, 6.966272, 4.476901, 2.570221],
        runsOutIn: 7,
      },
    },
    {
      place: 'the same, linear',
      input: { set: tenOn120, recovery: { form: 'linear' } },
      published: {
        afterSwim: [13.6, 13.6, 13.6, 13.6, 13.6],
        afterRest: [20, 20, 20, 20, 20],
        runsOutIn: null,
      },
    },
    {
      place: '2 × 100 in 1:06 on 1:16, differential',
      input: { set: '2 x 100 in 1:06 on 1:16', recovery: differential },
      published: { afterSwim: [5.8, -1.61305], afterRest: [12.58695], runsOutIn: 2 },
    },
    {
      place: '2 × 100 in 1:06 with 40 s easy at 0.9 m/s between, differential',
      input: { set: '2 x 100 in 1:06 on 1:46', recovery: differential, restSpeed: 0.9 },
      published: { afterSwim: [5.8, -0.580471], afterRest: [13.619529], runsOutIn: 2 },
    },
  ],
  tolerance: 1e-6,
  compute: ({ set, recovery, restSpeed = 0 }) => {
    const model = { speed: 1.3, reserve: 20 };
    const { steps, runsOut } = reserveThrough(parseSet(set), model, { recovery, restSpeed });
    const shown = steps.slice(0, 5);
    const rested = runsOut === null || steps.length > 5 ? shown : shown.slice(0, -1);
    return {
      afterSwim: shown.map(({ afterSwim }) => afterSwim),
      afterRest: rested.map(({ afterRest }) => afterRest),
      runsOutIn: runsOut?.rep ?? null,
    };
  },
};
