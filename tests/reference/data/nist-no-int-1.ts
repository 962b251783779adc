import { fitLine } from '../../../packages/core/src/projection/line-fit.js';
import type { Reference } from '../reference.js';

interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

interface Fit {
  readonly slope: number;
  readonly slopeError: number;
  readonly deviation: number;
  readonly rSquared: number;
}

const ten = (fit: Fit): Fit =>
  Object.fromEntries(
    Object.entries(fit).map(([name, value]) => [name, Number(value.toPrecision(10))]),
  ) as unknown as Fit;

/**
 * A certified line through the origin. Each point with its mirror image forces the fitted line
 * through the origin: twice the squares over twice the degrees of freedom, so all but the slope's
 * error come out alike, and that one by a factor of √2.
 */
export const nistNoInt1: Reference<Points, Fit> = {
  key: 'nist-no-int-1',
  title: 'Least squares: NIST StRD data set NoInt1, by mirrored points',
  source:
    'National Institute of Standards and Technology, Statistical Reference Datasets, linear regression, NoInt1; by copies in the tests of public numerical libraries',
  standing: 'quoted',
  rows: [
    {
      place: 'certified values, 11 observations',
      input: {
        x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
        y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
      },
      published: ten({
        slope: 2.07438016528926,
        slopeError: 0.165289256198347e-1,
        deviation: 3.56753034006338,
        rSquared: 0.999365492298663,
      }),
    },
  ],
  compute: ({ x, y }) => {
    const mirrored = (values: readonly number[]) => [...values, ...values.map((value) => -value)];
    const { slope, scatter } = fitLine(mirrored(x), mirrored(y));
    const { slopeError, deviation, rSquared } = scatter!;
    return ten({ slope, slopeError: slopeError * Math.SQRT2, deviation, rSquared });
  },
};
