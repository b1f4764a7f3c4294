import { scaleLinear } from 'd3-scale';
import { element, type Markup } from '../html/element.js';
import { shorten } from '../shorten.js';
import { bottomAxis } from './axis.js';
import { at, figure, segment, text } from './figure.js';
import { marker, type SeriesStyle } from './series-style.js';

/** One figure with its interval: a dot with whiskers. */
export interface IntervalRow {
  readonly label: string;
  readonly value: number;
  readonly interval?: { readonly low: number; readonly high: number };
  /** The figure as it is printed beside the dot. */
  readonly printed: string;
  readonly style: SeriesStyle;
}

/** A value that the rows are held against, drawn as a vertical line. */
export interface ReferenceLine {
  readonly value: number;
  readonly label: string;
  readonly kind: 'limit' | 'reference';
}

/** Figures of one quantity, a row each, with the lines they are held against. */
export interface IntervalChart {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** Quantity and unit. */
  readonly axisLabel: string;
  readonly rows: readonly IntervalRow[];
  readonly lines: readonly ReferenceLine[];
  /** Shared by the panels of a figure, so that they can be compared. */
  readonly domain: readonly [number, number];
}

const WIDTH = 360;
const ROW = 24;
const LEFT = 102;
const RIGHT = WIDTH - 48;

/** Dot-and-whisker chart: the interval as a line with end caps, the figure as the mark of its package. */
export function intervalChart({ id, title, description, axisLabel, rows, lines, domain }: IntervalChart): Markup {
  const top = 8 + 13 * lines.length;
  const bottom = top + ROW * rows.length + 6;
  const scale = scaleLinear().domain(domain).nice().range([LEFT, RIGHT]);
  return figure(
    { id, title, description, width: WIDTH, height: bottom + 36 },
    bottomAxis({ scale, label: axisLabel, ticks: 5 }, bottom, top),
    lines.map(({ value, kind }, i) => segment(scale(value), 5 + 13 * i, scale(value), bottom, kind)),
    lines.map(({ value, label, kind }, i) => {
      const x = scale(value);
      const right = x > (LEFT + RIGHT) / 2;
      const anchor = right ? 'end' : 'start';
      return text(x + (right ? -4 : 4), 14 + 13 * i, label, { 'text-anchor': anchor, class: `${kind}-label` });
    }),
    rows.map((row, i) => drawRow(row, scale, top + ROW * (i + 0.5) + 3)),
  );
}

function drawRow(row: IntervalRow, scale: (value: number) => number, y: number): Markup {
  const { label, value, interval, printed, style } = row;
  const low = interval && at(scale(interval.low));
  const high = interval && at(scale(interval.high));
  return element(
    'g',
    {},
    text(0, y + 4, shorten(label, 15)),
    low !== undefined &&
      high !== undefined &&
      element('path', {
        class: `${style.className} whisker`,
        d: `M${low} ${at(y)}H${high}M${low} ${at(y - 4)}v8M${high} ${at(y - 4)}v8`,
      }),
    marker(scale(value), y, style),
    text(WIDTH - 2, y + 4, printed, { 'text-anchor': 'end', class: 'figure-value' }),
  );
}
