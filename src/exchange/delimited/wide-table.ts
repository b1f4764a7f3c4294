import { TintladderError } from '../../core/index.js';
import type { ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import type { FileContext } from '../table/file-context.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, planTable } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { headingStrength, parseQuantity } from './headings.js';
import { LARGEST_READING } from './layout.js';
import { type LooseRow, type Preamble, readPreamble } from './preamble.js';

/** Takes the rows of a file one by one. */
export interface LayoutReader {
  row(cells: string[], line: number): void;
  end(): void;
  tables(): readonly MeasurementTable[];
}

/** Reads wide tables, one below the other, each with its own heading. */
export function createWideReader(headingRow: number, file: FileContext, options: ReaderOptions): LayoutReader {
  const readers: RowReader[] = [];
  let loose: LooseRow[] = [];
  let heading: (LooseRow & Preamble) | undefined;
  let reader: RowReader | undefined;
  let gap = false;
  let received = 0;

  const open = (cells: readonly string[], line: number) => {
    const preamble = readPreamble(loose);
    noteLoose(loose, file);
    loose = [];
    if (preamble.unsupported)
      throw unsupportedQuantity(cellPlace(preamble.unsupported.line, 1), preamble.unsupported.quantity);
    if (preamble.scale) file.scale.state(preamble.scale.value, cellPlace(preamble.scale.line, 1));
    heading = { cells: cells.map((cell, i) => (i === 0 ? cell.replace(/^\s*#\s*/, '') : cell)), line, ...preamble };
    reader = undefined;
    gap = false;
  };

  const start = (head: LooseRow & Preamble, firstRow: readonly string[] | undefined): RowReader => {
    const placeOf = (index: number) => cellPlace(head.line, index + 1);
    // a delimiter at the end of every line makes a last column of nothing
    const cells = trimEnd(head.cells, firstRow);
    const plan = planTable(
      { ...head, columns: columnsOf(cells), placeOf, ...(firstRow ? { firstRow } : {}) },
      options.outsideRange,
      file.notes,
    );
    const made = createRowReader(plan, file);
    readers.push(made);
    return made;
  };

  const read = (cells: string[], line: number, current: RowReader) => {
    current.read(toWidth(cells, current.plan.width, line), line, (index) => cellPlace(line, index + 1));
  };

  return {
    row(cells, line) {
      if (!heading) {
        if (received++ === headingRow) open(cells, line);
        else if (!isBlank(cells)) loose.push({ cells, line });
        return;
      }
      if (reader && cells.length === reader.plan.width && !gap) {
        const first = Number.parseFloat(cells[firstReading(reader)]);
        if (first <= LARGEST_READING) return read(cells, line, reader);
      }
      if (isBlank(cells)) {
        gap = true;
        return;
      }
      if (isRepeat(cells)) return open(cells, line);
      if (isComment(cells, heading)) return;
      if (!reader) {
        if (takesUnits(cells, heading, line, file)) return;
        reader = start(heading, cells);
      }
      if (gap && isRemark(cells, reader)) {
        loose.push({ cells, line });
        return;
      }
      gap = false;
      read(cells, line, reader);
    },
    end() {
      if (heading && !reader) start(heading, undefined);
      noteLoose(loose, file);
    },
    tables: () => readers.map((made) => made.table()),
  };
}

function firstReading({ plan }: RowReader): number {
  return plan.spectrum?.columns[0] ?? plan.lab?.indices[0] ?? plan.xyz?.indices[0] ?? 0;
}

/** Whether a row holds nothing but delimiters. */
export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

function isRepeat(cells: readonly string[]): boolean {
  return headingStrength(cells) >= 2;
}

/** A line that starts with `#` and holds no full row of readings. */
export function isComment(cells: readonly string[], { cells: heading }: LooseRow): boolean {
  return /^\s*(#|\/\/)/.test(cells[0]) && cells.length < Math.max(2, heading.length);
}

/** A line of text between tables, such as a title or a closing remark: it has no number where readings stand. */
function isRemark(cells: readonly string[], { plan }: RowReader): boolean {
  if (cells.length >= plan.width && !isBlank(cells.slice(2))) return false;
  const columns = [...(plan.spectrum?.columns ?? []), ...(plan.lab?.indices ?? []), ...(plan.xyz?.indices ?? [])];
  return columns.every((column) => !/\d/.test(cells[column] ?? ''));
}

/** A line of units under the heading: the same unit, which is no number, in every column of readings. */
function takesUnits(cells: readonly string[], { cells: heading }: LooseRow, line: number, file: FileContext): boolean {
  const units = heading.flatMap((label, i) => (headingStrength(['name', label]) > 0 ? [cells[i]?.trim() ?? ''] : []));
  if (units.length === 0 || units.some((unit) => unit !== units[0]) || units[0] === '' || /^[\d.,+-]/.test(units[0]))
    return false;
  const quantity = parseQuantity(units[0]);
  const at = heading.findIndex((label) => headingStrength(['name', label]) > 0);
  if (quantity?.scale) file.scale.state(quantity.scale, cellPlace(line, at + 1));
  else if (quantity?.unsupported) throw unsupportedQuantity(cellPlace(line, at + 1), quantity.unsupported);
  else if (!quantity && !/^\[?\(?nm\)?\]?$/i.test(units[0])) {
    if (cells.filter((cell) => cell.trim() !== '').length < units.length) return false;
    throw unsupportedQuantity(cellPlace(line, at + 1), units[0]);
  }
  return true;
}

function trimEnd(cells: readonly string[], firstRow: readonly string[] | undefined): readonly string[] {
  let width = cells.length;
  while (width > 1 && cells[width - 1].trim() === '' && (firstRow?.[width - 1] ?? '').trim() === '') width--;
  return cells.slice(0, width);
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

/** Notes the lines that belong to no table. */
export function noteLoose(loose: readonly LooseRow[], file: FileContext): void {
  if (loose.length === 0) return;
  const lines = loose.length === 1 ? 'One line' : `${loose.length} lines`;
  file.notes.add('lines-outside-tables', `${lines} outside the tables hold no readings.`, `line ${loose[0].line}`);
}
