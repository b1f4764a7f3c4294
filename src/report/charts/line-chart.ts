import { TintladderError } from '../../core/index.js';
import { assertArray, assertString } from '../../core/internal.js';
import type { ChartText } from './chart-image.js';
import {
  assertChart,
  assertDrawable,
  assertInterval,
  assertLabelled,
  assertLines,
  assertRange,
  assertSize,
} from './check-chart.js';
import { drawLineChart, type Point, type PointInterval } from './draw-line-chart.js';
import { rangeOf } from './range.js';
import type { ReferenceLine } from './reference-line.js';
import { standaloneChart } from './standalone-chart.js';

/** A curve, points, intervals, or several of them under one name. */
export interface LineSeries {
  readonly label: string;
  /** Joined by a line. */
  readonly curve?: readonly (readonly [x: number, y: number])[] | undefined;
  /** Marked one by one. */
  readonly points?: readonly (readonly [x: number, y: number])[] | undefined;
  /** Vertical whiskers, usually of the points. */
  readonly intervals?: readonly { readonly x: number; readonly low: number; readonly high: number }[] | undefined;
  /** Which mark, dash and colour, counted from 0; the place in the list if absent. */
  readonly style?: number | undefined;
}

/** Curves and points over one axis. */
export interface LineChart extends ChartText {
  /** Quantity and unit. */
  readonly xLabel: string;
  /** Quantity and unit. */
  readonly yLabel: string;
  /** A series without values is left out. */
  readonly series: readonly LineSeries[];
  /** Values of y that the curves are compared with. */
  readonly lines?: readonly ReferenceLine[] | undefined;
  /** Range of x that is shown at least; it grows to hold everything drawn. */
  readonly xRange?: readonly [low: number, high: number] | undefined;
  /** Range of y that is shown at least; it grows to hold everything drawn, and to round ends. */
  readonly yRange?: readonly [low: number, high: number] | undefined;
  /** 360 if absent, which fits a phone; 1 unit is 1 px at full size. */
  readonly width?: number | undefined;
  /** 230 if absent, without the title above. */
  readonly height?: number | undefined;
}

/**
 * Curves and points as an SVG, each named at its right end.
 *
 * The SVG needs nothing around it and follows the reader's light or dark setting, in a page, in a notebook or as a file of its
 * own. Series differ by mark and dash as well as by colour. It reads as one image named by `title` and `description`.
 *
 * @param chart - what is drawn; `id` has no spaces and occurs once in the page
 * @returns one `<svg>` element, which is well-formed XML
 * @throws TintladderError `empty` without a value to draw; `not-finite` or `out-of-range` if a number can't be drawn;
 * `invalid-interval` if the ends of an interval are out of order; `invalid-option` if `id` or `style` is not usable, or for a part that the chart
 * has not; `wrong-type`
 * @example
 * const parts = [0.25, 0.5, 1, 2];
 * const svg = lineChart({
 *   id: 'ladder',
 *   title: 'K/S of an invented tint ladder',
 *   description: 'Rises in a straight line from 0.2 at 0.25 parts to 1.6 at 2 parts.',
 *   xLabel: 'Parts of colorant',
 *   yLabel: 'K/S',
 *   xRange: [0, 2],
 *   yRange: [0, 2],
 *   series: [
 *     { label: 'fitted', curve: [[0, 0], [2, 1.6]] },
 *     { label: 'measured', points: parts.map((x) => [x, 0.8 * x]), intervals: [{ x: 1, low: 0.7, high: 0.9 }] },
 *   ],
 * });
 * svg.startsWith('<svg ') && svg.includes('>measured</text>') // true
 */
export function lineChart(chart: LineChart): string {
  assertChart(chart, 'chart', ['xLabel', 'yLabel', 'series', 'lines', 'xRange', 'yRange', 'width', 'height']);
  const { xLabel, yLabel, series, lines = [], xRange, yRange, width, height } = chart;
  assertString(xLabel, 'xLabel');
  assertString(yLabel, 'yLabel');
  assertRange('xRange', xRange);
  assertRange('yRange', yRange);
  assertSize('width', width);
  assertSize('height', height, 120);
  assertLabelled('series', series);
  series.forEach(assertSeries);
  assertLines(lines);
  const drawn = series.flatMap(pointsOf);
  if (drawn.length === 0) {
    throw new TintladderError('empty', { path: 'series', received: series, expected: 'at least one value' });
  }
  const drawing = drawLineChart({
    kind: 'lines',
    xLabel,
    yLabel,
    lines,
    width,
    height,
    xDomain: rangeOf([...(xRange ?? []), ...drawn.map(([x]) => x)]),
    yDomain: rangeOf([...(yRange ?? []), ...drawn.map(([, y]) => y), ...lines.map(({ value }) => value)]),
    series: series.map((one, i) => ({ ...one, style: one.style ?? i })),
  });
  return standaloneChart(chart, drawing);
}

function assertSeries({ curve = [], points = [], intervals = [] }: LineSeries, index: number): void {
  const path = `series[${index}]`;
  for (const [name, list] of [
    ['curve', curve],
    ['points', points],
  ] as const) {
    assertArray(list, `${path}.${name}`);
    list.forEach((point, i) => {
      assertArray(point, `${path}.${name}[${i}]`, 'a point as [x, y]');
      const [x, y] = point;
      assertDrawable(`${path}.${name}[${i}][0]`, x);
      assertDrawable(`${path}.${name}[${i}][1]`, y);
    });
  }
  assertArray(intervals, `${path}.intervals`);
  intervals.forEach((interval, i) => {
    assertInterval(`${path}.intervals[${i}]`, interval);
    assertDrawable(`${path}.intervals[${i}].x`, interval.x);
  });
}

function pointsOf({ curve = [], points = [], intervals = [] }: LineSeries): Point[] {
  const ends = ({ x, low, high }: PointInterval): Point[] => [
    [x, low],
    [x, high],
  ];
  return [...curve, ...points, ...intervals.flatMap(ends)];
}
