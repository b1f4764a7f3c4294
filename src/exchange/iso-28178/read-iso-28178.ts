import { TintladderError } from '../../core/index.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { createFileContext, type FileContext, settleFile } from '../table/file-context.js';
import type { PlannedColumn, TableContext } from '../table/heading.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, planTable, type TablePlan } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import type { Notes } from '../text/notes.js';
import type { TextSink } from '../text/text-sink.js';
import { createDataTableReader, type DataFormat, type RowSink } from './data-tables.js';
import { contextOf, lastOf } from './keywords.js';
import { columnsByWavelength, isWavelengthField, originalIndex, withoutWavelengths } from './wavelength-pairs.js';

/**
 * Reads ISO 28178 keyword text: every table that holds spectra, L*, a*, b* or X, Y, Z.
 *
 * @throws TintladderError as `createDataTableReader`, and `no-header` when no table holds a colour, `unsupported-quantity` for spectra that
 * are described as something else than reflectance
 * @see ISO 28178, Graphic technology: exchange format for colour and process control data using XML or ASCII text
 */
export function createIso28178Reader(
  options: ReaderOptions,
  notes: Notes,
  emit: Emit,
): TextSink<readonly MeasurementTable[]> {
  const file = createFileContext(options, notes, emit);
  const readers: RowReader[] = [];
  /** Tables without a row so far: what they hold is looked at with their first row, or at the end. */
  const unbegun = new Set<Begin>();
  let first: DataFormat | undefined;
  const tables = createDataTableReader((format) => {
    first ??= format;
    return beginTable(format, file, readers, unbegun);
  });
  return {
    push: tables.push,
    end() {
      tables.end();
      for (const begin of unbegun) begin([]);
      if (readers.length === 0) {
        throw new TintladderError('no-header', {
          path: cellPlace(first?.line ?? 1, 1),
          received: first?.fields.join(', ') ?? '',
          expected: 'a table with reflectance, LAB_L, LAB_A, LAB_B or XYZ_X, XYZ_Y, XYZ_Z',
        });
      }
      return settleFile(file, () => readers.flatMap((reader) => reader.tables()));
    },
  };
}

/** Starts a table that has no rows yet. */
type Begin = (row: readonly string[]) => void;

function beginTable(format: DataFormat, file: FileContext, readers: RowReader[], unbegun: Set<Begin>): RowSink {
  const { fields, line } = format;
  const context = contextOf(format, file.notes);
  const start = (columns: readonly PlannedColumn[], row: readonly string[]): RowReader | undefined => {
    const plan = planColumns(columns, row, format, context, file);
    if (plan.spectra.length === 0 && plan.colours.length === 0) return undefined;
    checkBands(plan, format, file);
    const reader = createRowReader(plan, file);
    readers.push(reader);
    return reader;
  };
  if (fields.some(isWavelengthField)) return pairedRows(fields, start, file);
  const columns = columnsOf(fields);
  if (!columns.some(({ role: { kind } }) => kind === 'wavelength' || kind === 'coordinate'))
    return noteWithoutColour(line, file);
  let reader: RowReader | undefined;
  const begin = (row: readonly string[]) => {
    unbegun.delete(begin);
    reader = start(columns, row);
    if (!reader) noteWithoutColour(line, file);
  };
  unbegun.add(begin);
  return (cells, at) => {
    if (unbegun.has(begin)) begin(cells);
    reader?.read(cells, at, (index) => cellPlace(at, index + 1));
  };
}

/** Rows that bring their own wavelengths; those of the same wavelengths share a plan. */
function pairedRows(
  fields: readonly string[],
  start: (columns: readonly PlannedColumn[], row: readonly string[]) => RowReader | undefined,
  file: FileContext,
): RowSink {
  const byWavelengths = new Map<string, RowReader | undefined>();
  const wavelengthColumns = fields.flatMap((field, i) => (isWavelengthField(field) ? [i] : []));
  return (cells, at) => {
    let key = '';
    for (const column of wavelengthColumns) key += `${cells[column]} `;
    let reader = byWavelengths.get(key);
    const own = withoutWavelengths(fields, cells);
    if (!byWavelengths.has(key)) {
      reader = start(columnsByWavelength(fields, cells, at, file), own);
      byWavelengths.set(key, reader);
    }
    reader?.read(own, at, (index) => cellPlace(at, originalIndex(fields, index) + 1));
  };
}

function planColumns(
  columns: readonly PlannedColumn[],
  row: readonly string[],
  { line }: DataFormat,
  context: TableContext,
  file: FileContext,
): TablePlan {
  const placeOf = (index: number) => cellPlace(line, index + 1);
  return planTable({ columns, line, placeOf, rows: [row], context }, file.options, file.notes);
}

function noteWithoutColour(line: number, file: FileContext): RowSink {
  const message = 'A table holds neither reflectance nor L*, a*, b* nor X, Y, Z; it was left out.';
  file.notes.add('tables-without-colour', message, `line ${line}`);
  return () => undefined;
}

function checkBands(plan: TablePlan, { keywords, line }: DataFormat, { options }: FileContext): void {
  const bands = lastOf(keywords, 'SPECTRAL_BANDS');
  const count = plan.spectra[0]?.columns.length;
  if (bands === undefined || count === undefined || options.outsideRange !== 'refuse' || Number(bands) === count)
    return;
  throw new TintladderError('count-mismatch', {
    path: cellPlace(line, 1),
    received: count,
    expected: `${bands} bands, as SPECTRAL_BANDS says`,
  });
}
