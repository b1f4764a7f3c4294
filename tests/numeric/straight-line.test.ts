import { expect, test } from 'vitest';
import { fitStraightLine } from '../../src/numeric/internal.js';

// Anscombe (1973), The American Statistician 27, 17-21, first data set; printed there: y = 3 + 0.5 x, standard error of the
// slope 0.118, 9 degrees of freedom, residual sum of squares 13.75.
const X = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
const Y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];

test('the line of a published example, to its printed digits', () => {
  const line = fitStraightLine(X, Y);
  expect(line.intercept).toBeCloseTo(3, 2);
  expect(line.slope).toBeCloseTo(0.5, 3);
  expect(line.slopeError).toBeCloseTo(0.118, 3);
  expect(line.degreesOfFreedom).toBe(9);
  // at the mean of x only the mean of y scatters
  expect(line.errorAt(9)).toBeCloseTo(Math.sqrt(13.75 / 9 / 11), 2);
});

test('points on a line leave no error', () => {
  const { intercept, slope, slopeError } = fitStraightLine([1, 2, 4], [3, 5, 9]);
  expect([intercept, slope]).toEqual([1, 2]);
  expect(slopeError).toBeCloseTo(0, 12);
});
