import type { ReaderOptions } from '../measurement/format-contract.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import type { FileContext } from '../table/file-context.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, planTable } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { isNameHeading, isWavelengthHeading, parseQuantity } from './headings.js';
import { type LooseRow, readPreamble } from './preamble.js';
import { isBlank, isComment, type LayoutReader, noteLoose, toWidth } from './wide-table.js';

/** Reads a table with one row per wavelength and one column per sample. It is turned, and then read as a wide one. */
export function createTransposedReader(headingRow: number, file: FileContext, options: ReaderOptions): LayoutReader {
  const loose: LooseRow[] = [];
  const rows: LooseRow[] = [];
  let received = 0;
  let reader: RowReader | undefined;

  return {
    row(cells, line) {
      if (isBlank(cells)) received++;
      else if (received++ < headingRow) loose.push({ cells, line });
      else if (rows.length > 0 && isComment(cells, rows[0])) return;
      else rows.push({ cells, line });
    },
    end() {
      const { stated, common, scale, unsupported } = readPreamble(loose);
      noteLoose(loose, file);
      if (unsupported) throw unsupportedQuantity(cellPlace(unsupported.line, 1), unsupported.quantity);
      if (scale) file.scale.state(scale.value, cellPlace(scale.line, 1));
      const width = Math.max(...rows.map(({ cells }) => lastFilled(cells) + 1));
      const kept = rows
        .filter((row) => !takesUnits(row, file))
        .map(({ cells, line }) => ({ cells: toWidth([...cells], width, line), line }));
      const headings = kept.map(({ cells }) => cells[0]);
      const nameRow = findNameRow(headings);
      const column = (index: number) => kept.map(({ cells }) => cells[index]);
      const placeIn = (index: number) => (row: number) => cellPlace(kept[row].line, index + 1);
      const plan = planTable(
        {
          columns: columnsOf(headings),
          line: kept[0].line,
          placeOf: placeIn(0),
          firstRow: column(1),
          stated,
          common,
          ...(nameRow === undefined ? {} : { nameColumn: nameRow }),
        },
        options.outsideRange,
        file.notes,
      );
      reader = createRowReader(plan, file);
      for (let index = 1; index < width; index++) reader.read(column(index), kept[0].line, placeIn(index));
    },
    tables: () => (reader ? [reader.table()] : []),
  };
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
  return parseWavelengthLabel(headings[0]) === undefined ? 0 : undefined;
}

/** A row of units: `nm` and then one unit for every sample. */
function takesUnits({ cells, line }: LooseRow, file: FileContext): boolean {
  const units = cells.slice(1).map((cell) => cell.trim());
  if (!(isWavelengthHeading(cells[0]) || cells[0].trim() === '') || units.some((unit) => unit !== units[0]))
    return false;
  const quantity = parseQuantity(units[0]);
  if (quantity?.unsupported) throw unsupportedQuantity(cellPlace(line, 2), quantity.unsupported);
  if (quantity?.scale) file.scale.state(quantity.scale, cellPlace(line, 2));
  return quantity?.scale !== undefined;
}
