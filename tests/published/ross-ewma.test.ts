import { expect, test } from 'vitest';
import { chartControls } from '../../src/evidence/index.js';

// Ross, Introduction to Probability and Statistics for Engineers and Scientists, section 13.6, exponentially weighted moving averages of 16
// subgroup means: weight 0.25, centre 62, standard deviation of a mean 12, start at 60; limits 48.39 and 75.61, out of control at subgroups 14
// and 16. The book rounds at every step, so that errors of half a digit add up to at most 0.005 / 0.25 = 0.02, and printing adds 0.005.

const MEANS = [48, 52, 70, 62, 57, 81, 56, 59, 77, 82, 78, 80, 74, 82, 68, 84];
const AVERAGES = [
  57, 55.75, 59.31, 59.98, 59.24, 64.68, 62.5, 61.61, 65.48, 69.6, 71.7, 73.78, 73.83, 75.87, 73.9, 76.43,
];

test('moving averages, limits and signals', () => {
  const { points, limits, signals } = chartControls(
    MEANS.map((value) => ({ value })),
    { centre: 62, standardDeviation: 12, start: 60, weight: 0.25 },
  );
  points.forEach(({ movingAverage }, i) => {
    expect(Math.abs(movingAverage - AVERAGES[i])).toBeLessThanOrEqual(0.025);
  });
  expect(Math.abs(limits['moving-average'].low - 48.39)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(limits['moving-average'].high - 75.61)).toBeLessThanOrEqual(0.005);
  expect(signals).toEqual([
    { index: 13, direction: 'high' },
    { index: 15, direction: 'high' },
  ]);
});
