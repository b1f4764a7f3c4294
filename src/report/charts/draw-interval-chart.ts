import { scaleLinear } from 'd3-scale';
import { element, fragment, type Markup } from '../markup/element.js';
import { bottomAxis } from './axis.js';
import type { Drawing } from './chart-image.js';
import type { ReferenceLine } from './reference-line.js';
import { marker } from './series-style.js';
import { type StyleName, styleOf } from './style-name.js';
import { at, segment, text } from './svg-parts.js';
import { cutToWidth, textWidth } from './text-width.js';

/** One figure with its interval, and how it is drawn. */
export interface PlottedRow {
  readonly label: string;
  readonly value: number;
  readonly interval?: { readonly low: number; readonly high: number } | undefined;
  /** The figure as it is printed beside the dot. */
  readonly printed: string;
  readonly style: StyleName;
}

/** Figures of one quantity, a row each, with the lines they are compared with. */
export interface IntervalPlot {
  readonly kind: 'intervals';
  /** Quantity and unit. */
  readonly axisLabel: string;
  readonly rows: readonly PlottedRow[];
  readonly lines: readonly ReferenceLine[];
  /** Shared by the panels of a group, so that they can be compared. */
  readonly domain: readonly [number, number];
  readonly width?: number | undefined;
}

const ROW = 24;
/** Room for the names, so that short ones leave the same to every panel; longer ones take up to half of the width. */
const NAMES = 102;
const PRINTED = 48;

/** Dot-and-whisker chart: the interval as a line with end caps, the figure as the mark of its package. */
export function drawIntervalChart({ axisLabel, rows, lines, domain, width = 360 }: IntervalPlot): Drawing {
  const top = 8 + 13 * lines.length;
  const bottom = top + ROW * rows.length + 6;
  const left = Math.min(width / 2, Math.max(NAMES, ...rows.map(({ label }) => Math.ceil(textWidth(label)) + 10)));
  const printedWidth = Math.max(...rows.map(({ printed }) => Math.ceil(textWidth(printed)) + 10));
  const right = width - Math.min(width / 4, Math.max(PRINTED, printedWidth));
  const scale = scaleLinear().domain(domain).nice().range([left, right]);
  const content = fragment(
    bottomAxis({ scale, label: axisLabel, ticks: 5 }, bottom, top),
    lines.map(({ value, kind }, i) => segment(scale(value), 5 + 13 * i, scale(value), bottom, kind)),
    lines.map(({ value, label, kind }, i) => {
      const x = scale(value);
      const turned = x > (left + right) / 2;
      const anchor = turned ? 'end' : 'start';
      return text(x + (turned ? -4 : 4), 14 + 13 * i, label, { 'text-anchor': anchor, class: `${kind}-label` });
    }),
    rows.map((row, i) => drawRow(row, scale, left, width, top + ROW * (i + 0.5) + 3)),
  );
  return { width, height: bottom + 36, content };
}

function drawRow(row: PlottedRow, scale: (value: number) => number, left: number, width: number, y: number): Markup {
  const { label, value, interval, printed } = row;
  const style = styleOf(row.style);
  const low = interval && at(scale(interval.low));
  const high = interval && at(scale(interval.high));
  return element(
    'g',
    {},
    text(2, y + 4, cutToWidth(label, left - 10)),
    low !== undefined &&
      high !== undefined &&
      element('path', {
        class: `${style.className} whisker`,
        d: `M${low} ${at(y)}H${high}M${low} ${at(y - 4)}v8M${high} ${at(y - 4)}v8`,
      }),
    marker(scale(value), y, style),
    text(width - 2, y + 4, printed, { 'text-anchor': 'end', class: 'figure-value' }),
  );
}
