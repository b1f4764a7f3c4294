import { type ErrorCode, TintladderError } from '../../core/index.js';
import {
  assertArray,
  assertNonEmptyArray,
  assertObject,
  assertOneOf,
  assertOptions,
  assertString,
} from '../../core/internal.js';
import type { ChartText } from './chart-image.js';
import { REFERENCE_LINE_KINDS, type ReferenceLine } from './reference-line.js';

/** Beyond these an axis can't be labelled in plain decimals. */
const LARGEST = 1e9;
const NARROWEST = 240;
const WIDEST = 4000;

/** A chart with its words, and with nothing that such a chart has not. */
export function assertChart(chart: ChartText, path: string, names: readonly string[]): void {
  assertObject(chart, path);
  assertOptions(chart, ['id', 'title', 'description', ...names], path);
  assertString(chart.title, 'title');
  assertString(chart.description, 'description');
}

/** Lines that the figures are compared with. */
export function assertLines(lines: readonly ReferenceLine[]): void {
  assertArray(lines, 'lines');
  lines.forEach((line, i) => {
    const path = `lines[${i}]`;
    assertObject(line, path);
    assertDrawable(`${path}.value`, line.value);
    assertString(line.label, `${path}.label`);
    assertOneOf(line.kind, REFERENCE_LINE_KINDS, `${path}.kind`);
  });
}

/** A list with at least one entry, each with its name and its style. */
export function assertLabelled(
  path: string,
  items: readonly { readonly label: string; readonly style?: number | undefined }[],
): void {
  assertNonEmptyArray(items, path);
  items.forEach((item, i) => {
    assertObject(item, `${path}[${i}]`);
    assertString(item.label, `${path}[${i}].label`);
    assertStyle(`${path}[${i}].style`, item.style);
  });
}

/** A coordinate that can be drawn. */
export function assertDrawable(path: string, value: unknown): asserts value is number {
  if (typeof value !== 'number' || !Number.isFinite(value)) fault('not-finite', path, value, 'a finite number');
  if (Math.abs(value) > LARGEST) fault('out-of-range', path, value, `a number between -${LARGEST} and ${LARGEST}`);
}

/** An interval whose ends can be drawn and stand in order. */
export function assertInterval(path: string, interval: { readonly low: number; readonly high: number }): void {
  assertObject(interval, path, 'an interval with low and high');
  const { low, high } = interval;
  assertDrawable(`${path}.low`, low);
  assertDrawable(`${path}.high`, high);
  if (low > high) fault('invalid-interval', `${path}.high`, high, `at least the lower end ${low}`);
}

/** A range to be shown, where one is given. */
export function assertRange(path: string, range: readonly [number, number] | undefined): void {
  if (range === undefined) return;
  assertArray(range, path, 'the two ends of a range');
  if (range.length !== 2) fault('wrong-length', path, range.length, 'two ends');
  range.forEach((end, i) => {
    assertDrawable(`${path}[${i}]`, end);
  });
  if (!(range[0] < range[1])) fault('out-of-range', `${path}[1]`, range[1], `a number above ${range[0]}`);
}

/** Width or height of a figure, where one is given. */
export function assertSize(path: string, size: number | undefined, least = NARROWEST): void {
  if (size === undefined || (typeof size === 'number' && size >= least && size <= WIDEST)) return;
  fault('out-of-range', path, size, `a number between ${least} and ${WIDEST}`);
}

/** The number of a style, where one is given. */
function assertStyle(path: string, style: number | undefined): void {
  if (style === undefined || (Number.isSafeInteger(style) && style >= 0)) return;
  fault('invalid-option', path, style, 'a whole number from 0');
}

function fault(code: ErrorCode, path: string, received: unknown, expected: string): never {
  throw new TintladderError(code, { path, received, expected });
}
