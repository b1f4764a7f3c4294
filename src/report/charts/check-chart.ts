import { type ErrorCode, TintladderError } from '../../core/index.js';

/** Beyond these an axis can't be labelled in plain decimals. */
const LARGEST = 1e9;
const NARROWEST = 240;
const WIDEST = 4000;

/** A coordinate that can be drawn. */
export function assertDrawable(path: string, value: number): void {
  if (!Number.isFinite(value)) fault('not-finite', path, value, 'a finite number');
  if (Math.abs(value) > LARGEST) fault('out-of-range', path, value, `a number between -${LARGEST} and ${LARGEST}`);
}

/** An interval whose ends can be drawn and stand in order. */
export function assertInterval(path: string, { low, high }: { readonly low: number; readonly high: number }): void {
  assertDrawable(`${path}.low`, low);
  assertDrawable(`${path}.high`, high);
  if (low > high) fault('invalid-interval', `${path}.high`, high, `at least the lower end ${low}`);
}

/** A range to be shown, where one is given. */
export function assertRange(path: string, range: readonly [number, number] | undefined): void {
  if (!range) return;
  range.forEach((end, i) => {
    assertDrawable(`${path}[${i}]`, end);
  });
  if (!(range[0] < range[1])) fault('out-of-range', `${path}[1]`, range[1], `a number above ${range[0]}`);
}

/** Width or height of a figure, where one is given. */
export function assertSize(path: string, size: number | undefined, least = NARROWEST): void {
  if (size === undefined || (size >= least && size <= WIDEST)) return;
  fault('out-of-range', path, size, `a number between ${least} and ${WIDEST}`);
}

/** The number of a style, where one is given. */
export function assertStyle(path: string, style: number | undefined): void {
  if (style === undefined || (Number.isSafeInteger(style) && style >= 0)) return;
  fault('invalid-option', path, style, 'a whole number from 0');
}

/** Something to draw. */
export function assertSome(path: string, items: readonly unknown[], what: string): void {
  if (items.length === 0) fault('empty', path, 'an empty list', `at least one ${what}`);
}

function fault(code: ErrorCode, path: string, received: unknown, expected: string): never {
  throw new TintladderError(code, { path, received, expected });
}
