import { meanOf, sumOf } from '../statistics.js';
import { studentT } from './student-t.js';

/**
 * Both ends of an interval, in the unit of the figure it belongs to: in {@link CriticalSpeed}, {@link PowerLaw}
 * and {@link TrackRecordRow}.
 */
export interface Interval {
  /** The lower end, in the unit of its figure. */
  readonly low: number;
  /** The upper end, in the unit of its figure. */
  readonly high: number;
}

/** A straight line y = intercept + slope·x, by least squares. */
export interface LineFit {
  readonly slope: number;
  readonly intercept: number;
  /** The centre the line passes through. */
  readonly x: number;
  readonly y: number;
  /** Σ(x − mean)². */
  readonly squares: number;
  /** Each y less the line. */
  readonly residuals: readonly number[];
  /** How far the points lie from the line; null for two, which leave nothing over to judge it by. */
  readonly scatter: Scatter | null;
}

interface Scatter {
  /** Standard deviation of the residuals, with n − 2. */
  readonly deviation: number;
  readonly slopeError: number;
  readonly interceptError: number;
  readonly rSquared: number;
  /** Student's t that 95 % lie within. */
  readonly t: number;
}

/** Fits a line to two or more points with different x. Centres before it multiplies. */
export function fitLine(xs: readonly number[], ys: readonly number[]): LineFit {
  const x = meanOf(xs);
  const y = meanOf(ys);
  const dx = xs.map((value) => value - x);
  const dy = ys.map((value) => value - y);
  const squares = sumOf(dx.map((d) => d * d));
  const slope = sumOf(dx.map((d, i) => d * (dy[i] as number))) / squares;
  const residuals = dx.map((d, i) => (dy[i] as number) - slope * d);
  const count = xs.length;
  const error = sumOf(residuals.map((r) => r * r));
  const deviation = Math.sqrt(error / (count - 2));
  return {
    slope,
    intercept: y - slope * x,
    x,
    y,
    squares,
    residuals,
    scatter:
      count < 3
        ? null
        : {
            deviation,
            slopeError: deviation / Math.sqrt(squares),
            interceptError: deviation * Math.sqrt(1 / count + (x * x) / squares),
            rSquared: 1 - error / sumOf(dy.map((d) => d * d)),
            t: studentT(0.975, count - 2),
          },
  };
}

/** The 95 % interval of a fitted figure. */
export function intervalOf(value: number, error: number, { t }: Scatter): Interval {
  return { low: value - t * error, high: value + t * error };
}
