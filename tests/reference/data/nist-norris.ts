import { fitLine } from '../../../packages/core/src/projection/line-fit.js';
import type { Reference } from '../reference.js';

interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

interface Fit {
  readonly intercept: number;
  readonly interceptError: number;
  readonly slope: number;
  readonly slopeError: number;
  readonly deviation: number;
  readonly rSquared: number;
}

/** To ten digits: the certified values have fifteen, and 1e-9 is asked. */
const ten = (fit: Fit): Fit =>
  Object.fromEntries(
    Object.entries(fit).map(([name, value]) => [name, Number(value.toPrecision(10))]),
  ) as unknown as Fit;

/** The straight line behind critical speed and the power law, on a certified data set. */
export const nistNorris: Reference<Points, Fit> = {
  key: 'nist-norris',
  title: 'Least squares: NIST StRD data set Norris',
  source:
    'National Institute of Standards and Technology, Statistical Reference Datasets, linear regression, Norris; by copies in the tests of public numerical libraries',
  standing: 'quoted',
  rows: [
    {
      place: 'certified values, 36 observations',
      input: {
        x: [
          0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
          666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1,
          887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
        ],
        y: [
          0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1,
          668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3,
          888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
        ],
      },
      published: ten({
        intercept: -0.262323073774029,
        interceptError: 0.232818234301152,
        slope: 1.00211681802045,
        slopeError: 0.429796848199937e-3,
        deviation: 0.884796396144373,
        rSquared: 0.999993745883712,
      }),
    },
  ],
  compute: ({ x, y }) => {
    const { intercept, slope, scatter } = fitLine(x, y);
    const { interceptError, slopeError, deviation, rSquared } = scatter!;
    return ten({ intercept, interceptError, slope, slopeError, deviation, rSquared });
  },
};
