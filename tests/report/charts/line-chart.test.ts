import { describe, expect, test } from 'vitest';
import { lineChart } from '../../../src/report/charts/line-chart.js';
import { BOTTOM_TICK, LEFT_TICK, marksOf, scaleOfTicks } from '../fixture/drawn.js';

const TEXT = { id: 'f', title: 'A title', description: 'What it shows.' };
const LINES = { ...TEXT, xLabel: 'x', yLabel: 'y' };

describe('line chart', () => {
  const markup = lineChart({
    ...TEXT,
    xLabel: 'Time, min',
    yLabel: 'Strength, %',
    xRange: [0, 120],
    yRange: [40, 110],
    series: [
      {
        label: 'A',
        curve: [
          [10, 50],
          [60, 90],
        ],
        points: [
          [10, 52],
          [60, 88],
        ],
        intervals: [{ x: 60, low: 84, high: 92 }],
      },
    ],
  });
  const x = scaleOfTicks(markup, BOTTOM_TICK);
  const y = scaleOfTicks(markup, LEFT_TICK);
  // the text of a tick stands 3.5 below its line
  const height = (value: number) => y(value) - 3.5;

  test('puts readings and curve where the axes say', () => {
    const marks = marksOf(markup);
    expect(marks[0][0]).toBeCloseTo(x(10), 0);
    expect(marks[0][1]).toBeCloseTo(height(52), 0);
    const [, x0, y0] = markup.match(/curve" d="M([\d.]+),([\d.]+)L/)?.map(Number) ?? [];
    expect(x0).toBeCloseTo(x(10), 0);
    expect(y0).toBeCloseTo(height(50), 0);
  });

  test('puts an interval upright at its point', () => {
    const [, at, low, high] = markup.match(/whisker" d="M([\d.]+) ([\d.]+)V([\d.]+)/)?.map(Number) ?? [];
    expect(at).toBeCloseTo(x(60), 0);
    expect(low).toBeCloseTo(height(84), 0);
    expect(high).toBeCloseTo(height(92), 0);
  });

  test('shows more than the range asked for where values lie outside', () => {
    const wide = lineChart({ ...LINES, yRange: [0, 1], series: [{ label: 'A', points: [[1, 7.2]] }] });
    const [[, mark]] = marksOf(wide);
    expect(mark).toBeGreaterThanOrEqual(26);
    expect(mark).toBeCloseTo(scaleOfTicks(wide, LEFT_TICK)(7.2) - 3.5, 0);
  });
});
