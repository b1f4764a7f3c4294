import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { element, fragment, type Markup } from '../markup/element.js';
import { bottomAxis, leftAxis } from './axis.js';
import type { Drawing } from './chart-image.js';
import type { ReferenceLine } from './reference-line.js';
import { marker } from './series-style.js';
import { spreadLabels } from './spread-labels.js';
import { type StyleName, styleOf } from './style-name.js';
import { at, segment, text } from './svg-parts.js';
import { cutToWidth, textWidth } from './text-width.js';

export type Point = readonly [x: number, y: number];

/** A vertical interval at a point. */
export interface PointInterval {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** One curve, its readings, or both, and how they are drawn. */
export interface PlottedSeries {
  readonly label: string;
  readonly style: StyleName;
  /** Joined by a line. */
  readonly curve?: readonly Point[] | undefined;
  /** Marked one by one. */
  readonly points?: readonly Point[] | undefined;
  /** Whiskers, usually of the points. */
  readonly intervals?: readonly PointInterval[] | undefined;
  /** Shown as a vertical stroke across the curve, such as an optimum. */
  readonly stroke?: Point | undefined;
}

/** Curves over one axis. */
export interface LinePlot {
  readonly kind: 'lines';
  readonly xLabel: string;
  readonly yLabel: string;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
  readonly series: readonly PlottedSeries[];
  /** Horizontal lines that the curves are compared with. */
  readonly lines?: readonly ReferenceLine[];
  readonly width?: number | undefined;
  readonly height?: number | undefined;
}

const LEFT = 40;
const TOP = 26;
/** Room for the names, so that short ones leave the same to every panel; longer ones take up to two fifths of the width. */
const NAMES = 90;
const LEADER = 30;

/** Line chart whose curves are named at their right end, so that no key is needed. */
export function drawLineChart(chart: LinePlot): Drawing {
  const { series, lines = [], width = 360, height = 230 } = chart;
  const drawn = series.filter((one) => endOf(one) !== undefined);
  const names = Math.min(0.4 * width, Math.max(NAMES, ...drawn.map(({ label }) => Math.ceil(textWidth(label)))));
  const right = width - LEADER - names;
  const bottom = height - 36;
  const xScale = scaleLinear().domain(chart.xDomain).range([LEFT, right]);
  const yScale = scaleLinear().domain(chart.yDomain).nice().range([bottom, TOP]);
  const content = fragment(
    bottomAxis({ scale: xScale, label: chart.xLabel, ticks: 5 }, bottom, TOP),
    leftAxis({ scale: yScale, label: chart.yLabel, ticks: 5 }, LEFT, right),
    lines.map(({ value, label, kind }) => [
      segment(LEFT, yScale(value), right, yScale(value), kind),
      text(LEFT + 4, yScale(value) - 4, label, { class: `${kind}-label` }),
    ]),
    drawn.map((one) => drawSeries(one, xScale, yScale)),
    drawLabels(drawn, xScale, yScale, names),
  );
  return { width, height, content };
}

/** Where the name of a series points to; undefined where there is nothing to be named. */
function endOf({ curve = [], points = [], intervals = [] }: PlottedSeries): Point | undefined {
  const last = intervals.at(-1);
  return curve.at(-1) ?? points.at(-1) ?? (last && [last.x, last.high]);
}

type Scale = ScaleLinear<number, number>;

function drawSeries(one: PlottedSeries, xScale: Scale, yScale: Scale): Markup {
  const { curve = [], points = [], intervals = [], stroke } = one;
  const style = styleOf(one.style);
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
    intervals.length > 0 &&
      element('path', {
        class: `${style.className} whisker`,
        d: intervals.map((interval) => whisker(interval, xScale, yScale)).join(''),
      }),
    points.map(([x, y]) => marker(xScale(x), yScale(y), style, 36)),
  );
}

function whisker({ x, low, high }: PointInterval, xScale: Scale, yScale: Scale): string {
  const [left, bottom, top] = [at(xScale(x) - 4), at(yScale(low)), at(yScale(high))];
  return `M${at(xScale(x))} ${bottom}V${top}M${left} ${top}h8M${left} ${bottom}h8`;
}

/** Each name stands beside the end of its curve, moved apart where they would cover each other, with a leader to its curve. */
function drawLabels(series: readonly PlottedSeries[], xScale: Scale, yScale: Scale, names: number): Markup {
  const [bottom] = yScale.range();
  const [, right] = xScale.range();
  const ends = series.map((one) => {
    const [x, y] = endOf(one) ?? [0, 0];
    return { x: xScale(x), y: yScale(y) };
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
    series.map(({ label, style: name, curve = [], points = [] }, i) => {
      const style = styleOf(name);
      return [
        element('path', {
          class: `${style.className} leader`,
          d: `M${at(ends[i].x + 2)} ${at(ends[i].y)}L${right + 8} ${at(heights[i])}`,
        }),
        curve.length > 0 &&
          element('path', {
            class: `${style.className} curve`,
            d: `M${right + 8} ${at(heights[i])}h18`,
            'stroke-dasharray': style.dash,
          }),
        points.length > 0 && marker(right + 17, heights[i], style, 30),
        text(right + LEADER, heights[i] + 3.5, cutToWidth(label, names)),
      ];
    }),
  );
}
