import { quantityTaken } from '../quantity/quantity-taken.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { columnRole } from '../table/column-role.js';
import type { FileContext } from '../table/file-context.js';
import type { TableContext } from '../table/heading.js';
import { NO_CONTEXT } from '../table/preamble.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, planTable } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { looksNumeric } from '../text/file-number.js';
import { noteClosing } from './closing-remarks.js';
import { headingStrength, unitOf, withoutCommentMark } from './headings.js';
import { LARGEST_READING, type Layout } from './layout.js';
import { isBlank, isComment, type LayoutReader, toWidth } from './layout-reader.js';
import { type LooseRow, readLooseRows } from './loose-rows.js';
import { withUpperHeading } from './upper-heading.js';

interface OpenHeading extends LooseRow {
  readonly context: TableContext;
  /** Rows of data, where they were looked at already. */
  readonly rows: Layout['rows'];
}

/** Reads wide tables, one below the other, each with its own heading. */
export function createWideReader({ headingRow, rows: lookedAt }: Layout, file: FileContext): LayoutReader {
  const readers: RowReader[] = [];
  let loose: LooseRow[] = [];
  let context = NO_CONTEXT;
  let heading: OpenHeading | undefined;
  let reader: RowReader | undefined;
  let gap = false;
  let received = 0;

  const open = (row: readonly string[], line: number) => {
    const upper = withUpperHeading(row, loose.at(-1), line);
    if (upper) loose.pop();
    const cells = upper ?? row;
    context = readLooseRows(loose, { ...context, name: undefined }, file.notes);
    loose = [];
    heading = {
      cells: cells.map((cell, i) => (i === 0 ? withoutCommentMark(cell) : cell)),
      line,
      context,
      rows: readers.length === 0 ? lookedAt : [],
    };
    reader = undefined;
    gap = false;
  };

  const start = (head: OpenHeading, firstRow: readonly string[] | undefined): RowReader => {
    const { line, context: around } = head;
    const placeOf = (index: number) => cellPlace(line, index + 1);
    // a delimiter at the end of every line makes a last column of nothing
    const columns = columnsOf(trimEnd(head.cells, firstRow));
    const rows = head.rows.length > 0 ? head.rows : firstRow ? [firstRow] : [];
    const made = createRowReader(
      planTable({ columns, line, placeOf, rows, context: around }, file.options, file.notes),
      file,
    );
    readers.push(made);
    return made;
  };

  return {
    row(cells, line) {
      if (!heading) {
        if (received++ === headingRow) open(cells, line);
        else if (!isBlank(cells)) loose.push({ cells, line });
        return;
      }
      const place = (index: number) => cellPlace(line, index + 1);
      if (reader && cells.length === reader.plan.width && !gap) {
        const first = Number.parseFloat(cells[firstReading(reader)]);
        if (first <= LARGEST_READING) return reader.read(cells, line, place);
      }
      if (isBlank(cells)) {
        gap = true;
        return;
      }
      if (headingStrength(cells) >= 2) return open(cells, line);
      if (isComment(cells, heading.cells.length)) return;
      if (!reader) {
        const units = takesUnits(cells, heading, line, file);
        if (units) {
          heading = { ...heading, context: units };
          return;
        }
        reader = start(heading, cells);
      }
      if (isRemark(cells, reader, gap)) {
        loose.push({ cells, line });
        return;
      }
      gap = false;
      reader.read(toWidth(cells, reader.plan.width, line), line, place);
    },
    end() {
      if (heading && !reader) start(heading, undefined);
      noteClosing(loose, context, file);
    },
    tables: () => readers.flatMap((made) => made.tables()),
  };
}

function readingColumns({ plan: { spectra, colours } }: RowReader): number[] {
  return [...spectra.flatMap(({ columns }) => [...columns]), ...colours.flatMap(({ indices }) => [...indices])];
}

function firstReading({ plan: { spectra, colours } }: RowReader): number {
  return spectra[0]?.columns[0] ?? colours[0]?.indices[0] ?? 0;
}

/**
 * A line of text among the readings, such as a title or a closing remark: no number where readings stand, and too few cells for a row of them. A
 * single word right below a row of readings may be a row that is cut off.
 */
function isRemark(cells: readonly string[], reader: RowReader, gap: boolean): boolean {
  const { width } = reader.plan;
  const filled = cells.filter((cell) => cell.trim() !== '').length;
  if (readingColumns(reader).some((column) => looksNumeric(cells[column] ?? ''))) return false;
  if (cells.length >= width && filled > 2) return false;
  return gap || filled > 1 || /[\s:=]/.test(cells[0].trim());
}

/** What a line of units under the heading states: the same unit, which is no number, in every column of readings. */
function takesUnits(
  cells: readonly string[],
  { cells: heading, context }: OpenHeading,
  line: number,
  { options }: FileContext,
): TableContext | undefined {
  const columns = heading.flatMap((label, i) =>
    ['wavelength', 'coordinate'].includes(columnRole(label).kind) ? [i] : [],
  );
  const unit = unitOf(columns.map((i) => cells[i] ?? ''));
  if (unit === undefined) return undefined;
  if (unit === 'wavelength') return context;
  const place = cellPlace(line, columns[0] + 1);
  if (unit === 'unknown') throw unsupportedQuantity(place, cells[columns[0]].trim());
  if (quantityTaken(unit.quantity, options.quantity) === undefined) {
    throw unsupportedQuantity(place, unit.quantity ?? '', unit.quantity);
  }
  return { ...context, quantity: { ...context.quantity, ...unit, place } };
}

function trimEnd(cells: readonly string[], firstRow: readonly string[] | undefined): readonly string[] {
  let width = cells.length;
  while (width > 1 && cells[width - 1].trim() === '' && (firstRow?.[width - 1] ?? '').trim() === '') width--;
  return cells.slice(0, width);
}
