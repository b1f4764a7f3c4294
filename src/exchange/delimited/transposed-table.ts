import { mergeParts } from '../conditions/stated-parts.js';
import { quantityTaken } from '../quantity/quantity-taken.js';
import { quantityInName } from '../quantity/quantity-text.js';
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
import { isNameHeading, isWavelengthHeading, parseValueHeading, unitOf, type ValueHeading } from './headings.js';
import type { Layout } from './layout.js';
import { isBlank, isComment, type LayoutReader, toWidth } from './layout-reader.js';
import { type LooseRow, readLooseRows } from './loose-rows.js';

/** Reads tables with one row per wavelength and one column per sample, one below the other. Each is turned, and then read as a wide one. */
export function createTransposedReader({ headingRow }: Layout, file: FileContext): LayoutReader {
  const readers: RowReader[] = [];
  let loose: LooseRow[] = [];
  let rows: LooseRow[] = [];
  let context = NO_CONTEXT;
  let received = 0;
  let gap = false;

  const finish = () => {
    if (rows.length === 0) return;
    readers.push(...readTable(rows, context, file));
    rows = [];
  };
  const openContext = () => {
    context = readLooseRows(loose, { ...context, name: undefined }, file.notes);
    loose = [];
  };

  return {
    row(cells, line) {
      if (isBlank(cells)) {
        received++;
        gap = rows.length > 0;
        return;
      }
      if (received++ < headingRow) {
        loose.push({ cells, line });
        return;
      }
      if (rows.length > 0 && isComment(cells, rows[0].cells.length)) return;
      const first = cells[0].trim();
      const hasReadings = rows.some((row) => isReadingRow(row.cells));
      const opens = hasReadings && (isWavelengthHeading(first) || (gap && isNameHeading(first)));
      if (opens) finish();
      if (rows.length === 0 && (loose.length > 0 || opens)) openContext();
      if (hasReadings && !opens && isRemark(cells, rows[0].cells.length, gap)) loose.push({ cells, line });
      else rows.push({ cells, line });
      gap = false;
    },
    end() {
      finish();
      noteClosing(loose, context, file);
    },
    tables: () => readers.flatMap((reader) => reader.tables()),
  };
}

function isReadingRow(cells: readonly string[]): boolean {
  return columnRole(cells[0]).kind === 'wavelength' && cells.slice(1).some((cell) => looksNumeric(cell));
}

/** A line of text below the readings: no number, and not a row of the table that says something of each sample. */
function isRemark(cells: readonly string[], width: number, gap: boolean): boolean {
  if (cells.slice(1).some((cell) => looksNumeric(cell))) return false;
  const { kind } = columnRole(cells[0]);
  if (kind === 'wavelength') return false;
  return gap || cells.length < width || /^[^:=]{1,60}[:=]\s*\S/.test(cells[0]);
}

function readTable(rows: readonly LooseRow[], context: TableContext, file: FileContext): RowReader[] {
  const width = Math.max(...rows.map(({ cells }) => lastFilled(cells) + 1));
  let around = context;
  const kept = rows.flatMap(({ cells, line }) => {
    const units = unitsOf(cells, line, file);
    if (units) around = { ...around, quantity: { ...around.quantity, ...units } };
    return units ? [] : [{ cells: toWidth([...cells], width, line), line }];
  });
  // a heading with nothing below, at the end of a file
  if (kept.length === 0) return [];
  const headings = kept.map(({ cells }) => cells[0]);
  const nameRow = findNameRow(headings);
  const columns = valueColumns(nameRow === undefined ? [] : kept[nameRow].cells, width, around);
  refuseOthers(columns, around, kept[nameRow ?? 0].line, file);
  const placeIn = (index: number) => (row: number) => cellPlace(kept[row].line, index + 1);
  const cellsOf = ({ index, heading, name }: SampleColumn) =>
    kept.map(({ cells }, row) => (row === nameRow && heading ? (name ?? around.name ?? '') : cells[index]));
  const readers = new Map<string, RowReader>();
  for (const column of columns) {
    const { heading, index } = column;
    if (quantityTaken(heading?.quantity ?? around.quantity?.quantity, file.options.quantity) === undefined) continue;
    const cells = cellsOf(column);
    const key = JSON.stringify(heading ?? null);
    let reader = readers.get(key);
    if (!reader) {
      const plan = planTable(
        {
          columns: columnsOf(headings),
          line: kept[0].line,
          placeOf: placeIn(0),
          rows: columns.map(cellsOf),
          context: contextOf(heading, around, cellPlace(kept[nameRow ?? 0].line, index + 1)),
          ...(nameRow === undefined ? {} : { nameColumn: nameRow }),
        },
        file.options,
        file.notes,
      );
      reader = createRowReader(plan, file);
      readers.set(key, reader);
    }
    reader.read(cells, kept[0].line, placeIn(index));
  }
  return [...readers.values()];
}

interface SampleColumn {
  readonly index: number;
  /** What the heading says of the values, where it says that rather than a name. */
  readonly heading?: ValueHeading | undefined;
  /** The name that stands beside it. */
  readonly name?: string | undefined;
}

/** The columns of readings. A single letter is a quantity only where it stands alone, or all headings are quantities; else it names a sample. */
function valueColumns(headings: readonly string[], width: number, around: TableContext): SampleColumn[] {
  const columns = Array.from({ length: width - 1 }, (_, i): SampleColumn => {
    const text = headings[i + 1] ?? '';
    const named = quantityInName(text);
    if (!named) return { index: i + 1, heading: parseValueHeading(text) };
    return { index: i + 1, heading: { quantity: named.quantity, stated: {}, letter: false }, name: named.name };
  });
  const several = columns.length > 1 && around.name === undefined;
  const all =
    columns.every(({ heading }) => heading !== undefined) && columns.some(({ heading }) => heading?.letter === false);
  return columns.map((column) => (column.heading?.letter && several && !all ? { index: column.index } : column));
}

function contextOf(heading: ValueHeading | undefined, around: TableContext, place: string): TableContext {
  if (!heading) return around;
  const { quantity, scale, stated } = heading;
  const said = { ...(quantity ? { quantity } : {}), ...(scale ? { scale } : {}) };
  return {
    ...around,
    stated: mergeParts(stated, around.stated),
    ...(quantity || scale ? { quantity: { rest: '', ...around.quantity, ...said, place } } : {}),
  };
}

/** Refuses a table all of whose columns hold another quantity; notes those beside reflectance. */
function refuseOthers(columns: readonly SampleColumn[], around: TableContext, line: number, file: FileContext): void {
  const others = columns.filter(
    ({ heading }) => quantityTaken(heading?.quantity ?? around.quantity?.quantity, file.options.quantity) === undefined,
  );
  if (others.length === 0) return;
  const [{ index, heading }] = others;
  const place = heading?.quantity ? cellPlace(line, index + 1) : (around.quantity?.place ?? cellPlace(line, 1));
  const quantity = heading?.quantity ?? around.quantity?.quantity;
  if (others.length === columns.length) throw unsupportedQuantity(place, quantity ?? '', quantity);
  for (const other of others) {
    file.notes.count(
      'other-quantities-left-out',
      cellPlace(line, other.index + 1),
      (count) =>
        `${count === 1 ? 'One column holds' : `${count} columns hold`} another quantity than reflectance (the first: ${quantity}); left out.`,
    );
  }
}

function lastFilled(cells: readonly string[]): number {
  let last = cells.length - 1;
  while (last > 0 && cells[last].trim() === '') last--;
  return last;
}

/** The row of the samples' names: one that says so, else the first unless it already holds readings. */
function findNameRow(headings: readonly string[]): number | undefined {
  const named = headings.findIndex(isNameHeading);
  if (named >= 0) return named;
  return columnRole(headings[0]).kind === 'wavelength' ? undefined : 0;
}

/** What a row of units says: `nm` and then one unit for every sample. */
function unitsOf(cells: readonly string[], line: number, { options }: FileContext): TableContext['quantity'] {
  if (!(isWavelengthHeading(cells[0]) || cells[0].trim() === '' || /^units?$/i.test(cells[0].trim()))) return undefined;
  const unit = unitOf(cells.slice(1));
  if (typeof unit !== 'object' || (unit.scale === undefined && unit.quantity === undefined)) return undefined;
  const place = cellPlace(line, 2);
  // a row of one quantity under the word for wavelengths may be the heading itself, whose letters are looked at there
  if (unit.scale === undefined && isWavelengthHeading(cells[0]) && !/^nm$/i.test(cells[0].trim())) return undefined;
  if (quantityTaken(unit.quantity, options.quantity) === undefined) {
    throw unsupportedQuantity(place, cells[1].trim(), unit.quantity);
  }
  return { ...unit, place };
}
