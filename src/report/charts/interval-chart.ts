import { TintladderError } from '../../core/index.js';
import { assertString, formatFixed } from '../../core/internal.js';
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
import { drawIntervalChart } from './draw-interval-chart.js';
import { rangeOf } from './range.js';
import type { ReferenceLine } from './reference-line.js';
import { standaloneChart } from './standalone-chart.js';

/** A figure with its interval. */
export interface IntervalRow {
  readonly label: string;
  readonly value: number;
  readonly interval?: { readonly low: number; readonly high: number } | undefined;
  /** Which mark and colour, counted from 0; the place in the list if absent. */
  readonly style?: number | undefined;
}

/** Figures of one quantity, a row each. */
export interface IntervalChart extends ChartText {
  /** Quantity and unit. */
  readonly axisLabel: string;
  readonly rows: readonly IntervalRow[];
  /** Values that the rows are compared with. */
  readonly lines?: readonly ReferenceLine[] | undefined;
  /** Range that is shown at least; it grows to hold everything drawn. */
  readonly range?: readonly [low: number, high: number] | undefined;
  /** Decimals of the figures printed beside the marks; 2 if absent. */
  readonly decimals?: number | undefined;
  /** 360 if absent, which fits a phone; 1 unit is 1 px at full size. */
  readonly width?: number | undefined;
}

/**
 * Figures with their intervals as an SVG: a mark with whiskers in each row, the figure printed beside it, and lines for the
 * values they are compared with.
 *
 * The SVG needs nothing around it and follows the reader's light or dark setting, in a page, in a notebook or as a file of its
 * own. Rows differ by mark as well as by colour. It reads as one image named by `title` and `description`.
 *
 * @param chart - what is drawn; `id` has no spaces and occurs once in the page
 * @returns one `<svg>` element, which is well-formed XML
 * @throws TintladderError `empty` without rows; `not-finite` or `out-of-range` if a number can't be drawn; `invalid-interval` if
 * the ends of an interval are out of order; `invalid-option` if `id`, `style` or `decimals` is not usable, or for a
 * part that the chart has not; `wrong-type`
 * @example
 * const svg = intervalChart({
 *   id: 'strength',
 *   title: 'Strength of two trials',
 *   description: 'A: 104.2 %, from 102.9 to 105.5. B: 97.3 %.',
 *   axisLabel: 'Strength, %',
 *   rows: [{ label: 'A', value: 104.2, interval: { low: 102.9, high: 105.5 } }, { label: 'B', value: 97.3 }],
 *   lines: [{ value: 100, label: 'reference', kind: 'reference' }],
 *   decimals: 1,
 * });
 * svg.startsWith('<svg ') && svg.includes('>104.2</text>') // true
 */
export function intervalChart(chart: IntervalChart): string {
  assertChart(chart, 'chart', ['axisLabel', 'rows', 'lines', 'range', 'decimals', 'width']);
  const { axisLabel, rows, lines = [], range, decimals = 2, width } = chart;
  assertString(axisLabel, 'axisLabel');
  assertLabelled('rows', rows);
  assertRange('range', range);
  assertSize('width', width);
  assertDecimals(decimals);
  rows.forEach(({ value, interval }, i) => {
    assertDrawable(`rows[${i}].value`, value);
    if (interval !== undefined) assertInterval(`rows[${i}].interval`, interval);
  });
  assertLines(lines);
  const shown = rows.flatMap(({ value, interval }) => [value, interval?.low ?? value, interval?.high ?? value]);
  const drawing = drawIntervalChart({
    kind: 'intervals',
    axisLabel,
    lines,
    width,
    domain: rangeOf([...(range ?? []), ...shown, ...lines.map(({ value }) => value)]),
    rows: rows.map((row, i) => ({
      ...row,
      printed: formatFixed(row.value, decimals),
      style: row.style ?? i,
    })),
  });
  return standaloneChart(chart, drawing);
}

function assertDecimals(decimals: number): void {
  if (Number.isSafeInteger(decimals) && decimals >= 0 && decimals <= 6) return;
  throw new TintladderError('invalid-option', {
    path: 'decimals',
    received: decimals,
    expected: 'a whole number from 0 to 6',
  });
}
