import { TintladderError } from '../../core/index.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { cellPlace } from '../text/cell-place.js';

/** Takes the rows of a file one by one, as its layout asks. */
export interface LayoutReader {
  row(cells: string[], line: number): void;
  end(): void;
  tables(): readonly MeasurementTable[];
}

/** Whether a row holds nothing but delimiters. */
export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

/** A line that starts with `#` and holds no full row of readings. */
export function isComment(cells: readonly string[], width: number): boolean {
  return /^\s*(#|\/\/)/.test(cells[0]) && cells.length < Math.max(2, width);
}

/** A row of the heading's length; empty cells at its end are dropped. */
export function toWidth(cells: string[], width: number, line: number): string[] {
  if (cells.length === width) return cells;
  if (cells.length > width && isBlank(cells.slice(width))) return cells.slice(0, width);
  throw new TintladderError('row-length', {
    path: cellPlace(line, Math.min(cells.length, width) + 1),
    received: cells.length,
    expected: `${width} cells, as in the heading`,
  });
}
