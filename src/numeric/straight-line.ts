import { mean, squaresAroundMean } from './moments.js';

/** A straight line `intercept + slope x` by least squares. */
export interface StraightLine {
  readonly intercept: number;
  readonly slope: number;
  /** Standard errors of the slope, and of the line's height at x. */
  readonly slopeError: number;
  readonly errorAt: (x: number) => number;
  readonly degreesOfFreedom: number;
}

/**
 * Fits a straight line to points of even scatter.
 *
 * @param x - at least three values, of which two differ
 * @param y - as many values
 * @see Draper & Smith, Applied Regression Analysis, 1.4
 */
export function fitStraightLine(x: readonly number[], y: readonly number[]): StraightLine {
  const centre = mean(x);
  const height = mean(y);
  const spread = squaresAroundMean(x);
  const slope = x.reduce((sum, value, i) => sum + (value - centre) * (y[i] - height), 0) / spread;
  const squares = x.reduce((sum, value, i) => sum + (y[i] - height - slope * (value - centre)) ** 2, 0);
  const degreesOfFreedom = x.length - 2;
  const deviation = Math.sqrt(squares / degreesOfFreedom);
  return {
    intercept: height - slope * centre,
    slope,
    slopeError: deviation / Math.sqrt(spread),
    errorAt: (at) => deviation * Math.sqrt(1 / x.length + (at - centre) ** 2 / spread),
    degreesOfFreedom,
  };
}
