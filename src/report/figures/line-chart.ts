import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { element, type Markup } from '../html/element.js';
import { shorten } from '../shorten.js';
import { bottomAxis, leftAxis } from './axis.js';
import { at, figure, segment, text } from './figure.js';
import { marker, type SeriesStyle } from './series-style.js';
import { spreadLabels } from './spread-labels.js';

export type Point = readonly [x: number, y: number];

/** One curve, its readings, or both. */
export interface Series {
  readonly label: string;
  readonly style: SeriesStyle;
  /** Joined by a line. */
  readonly curve: readonly Point[];
  /** Marked one by one. */
  readonly points?: readonly Point[];
  /** Shown as a vertical stroke across the curve, such as an optimum. */
  readonly stroke?: Point;
}

/** Curves over one axis. */
export interface LineChart {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
  readonly series: readonly Series[];
  /** A horizontal line that the curves are held against. */
  readonly level?: { readonly value: number; readonly label: string };
  readonly height?: number;
  readonly nice?: boolean;
}

const WIDTH = 360;
const LEFT = 40;
const RIGHT = WIDTH - 118;
const TOP = 26;

/** Line chart whose curves are named at their right end, so that no key is needed. */
export function lineChart(chart: LineChart): Markup {
  const { id, title, description, series, level, height = 230, nice = true } = chart;
  const bottom = height - 36;
  const xScale = scaleLinear().domain(chart.xDomain).range([LEFT, RIGHT]);
  const yScale = scaleLinear().domain(chart.yDomain).range([bottom, TOP]);
  if (nice) yScale.nice();
  const drawn = series.filter(({ curve, points = [] }) => curve.length + points.length > 0);
  return figure(
    { id, title, description, width: WIDTH, height },
    bottomAxis({ scale: xScale, label: chart.xLabel, ticks: 5 }, bottom, TOP),
    leftAxis({ scale: yScale, label: chart.yLabel, ticks: 5 }, LEFT, RIGHT),
    level && [
      segment(LEFT, yScale(level.value), RIGHT, yScale(level.value), 'reference'),
      text(LEFT + 4, yScale(level.value) - 4, level.label, { class: 'reference-label' }),
    ],
    drawn.map((one) => drawSeries(one, xScale, yScale)),
    drawLabels(drawn, xScale, yScale, bottom),
  );
}

type Scale = ScaleLinear<number, number>;

function drawSeries({ style, curve, points = [], stroke }: Series, xScale: Scale, yScale: Scale): Markup {
  const path = line<Point>(
    ([x]) => xScale(x),
    ([, y]) => yScale(y),
  ).digits(1)(curve);
  return element(
    'g',
    {},
    path !== null && element('path', { class: `${style.className} curve`, d: path, 'stroke-dasharray': style.dash }),
    stroke &&
      segment(
        xScale(stroke[0]),
        yScale(stroke[1]) - 9,
        xScale(stroke[0]),
        yScale(stroke[1]) + 9,
        `${style.className} whisker`,
      ),
    points.map(([x, y]) => marker(xScale(x), yScale(y), style, 36)),
  );
}

/** Each name stands beside the end of its curve, moved apart where they would cover each other, with a leader to its curve. */
function drawLabels(series: readonly Series[], xScale: Scale, yScale: Scale, bottom: number): Markup {
  const ends = series.map(({ curve, points = [] }) => {
    const end = curve.at(-1) ?? points.at(-1) ?? [0, 0];
    return { x: xScale(end[0]), y: yScale(end[1]) };
  });
  const heights = spreadLabels(
    ends.map(({ y }) => y),
    12,
    TOP,
    bottom,
  );
  return element(
    'g',
    {},
    series.map(({ label, style, points }, i) => [
      element('path', {
        class: `${style.className} leader`,
        d: `M${at(ends[i].x + 2)} ${at(ends[i].y)}L${RIGHT + 8} ${at(heights[i])}`,
      }),
      element('path', {
        class: `${style.className} curve`,
        d: `M${RIGHT + 8} ${at(heights[i])}h18`,
        'stroke-dasharray': style.dash,
      }),
      points && marker(RIGHT + 17, heights[i], style, 30),
      text(RIGHT + 30, heights[i] + 3.5, shorten(label, 13)),
    ]),
  );
}
