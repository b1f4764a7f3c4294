import { TintladderError } from '../../core/index.js';
import { type StatedConditions, toConditions } from '../conditions/stated-conditions.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { createFileContext, type FileContext, settleFile } from '../table/file-context.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, type PlannedColumn, planTable, type TablePlan } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { notANumber, parseFileNumber } from '../text/file-number.js';
import type { Notes } from '../text/notes.js';
import { gatherText, type TextSink } from '../text/text-sink.js';
import { isWavelength, parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { type DataTable, readDataTables } from './data-tables.js';

/** Words in a description that tell spectra of light from spectra of a surface. */
const NO_REFLECTANCE =
  /spectral power|illumin(?!ance\b|ated)|light source|\blamp\b|emissi|radian|ambient|transmi|colou?r match|sensitivit|absorban|\bK\/S\b/i;
/** Keywords whose value describes what was measured. */
const DESCRIPTIONS = ['DESCRIPTOR', 'FILE_DESCRIPTOR', 'TABLE_DESCRIPTOR', 'MEAS_TYPE', 'MEASUREMENT_TYPE', 'DISPLAY'];

/**
 * Reads ISO 28178 keyword text: every table that holds spectra, L*, a*, b* or X, Y, Z.
 *
 * @throws TintladderError as {@link readDataTables}, and `no-header` when no table holds a colour, `unsupported-quantity` for spectra that
 * are described as something else than reflectance
 * @see ISO 28178, Graphic technology: exchange format for colour and process control data using XML or ASCII text
 */
export function createIso28178Reader(
  options: ReaderOptions,
  notes: Notes,
  emit: Emit,
): TextSink<readonly MeasurementTable[]> {
  return gatherText((text) => {
    const file = createFileContext(options.scale, notes, emit);
    return settleFile(file, readText(text, file, options));
  });
}

function readText(text: string, file: FileContext, options: ReaderOptions): () => readonly MeasurementTable[] {
  const tables = readDataTables(text.replace(/\r\n?/g, '\n'));
  const readers: RowReader[] = [];
  for (const table of tables) {
    const reader = readTable(table, file, options);
    if (reader) readers.push(...reader);
    else {
      const message = 'A table holds neither reflectance nor L*, a*, b* nor X, Y, Z; it was left out.';
      file.notes.add('tables-without-colour', message, `line ${table.line}`);
    }
  }
  if (readers.length === 0) {
    throw new TintladderError('no-header', {
      path: cellPlace(tables[0]?.line ?? 1, 1),
      received: tables[0]?.fields.join(', ') ?? '',
      expected: 'a table with reflectance, LAB_L, LAB_A, LAB_B or XYZ_X, XYZ_Y, XYZ_Z',
    });
  }
  return () => readers.map((reader) => reader.table());
}

function readTable(table: DataTable, file: FileContext, options: ReaderOptions): readonly RowReader[] | undefined {
  refuseOtherSpectra(table);
  const stated = statedConditions(table);
  const common = toConditions(stated);
  const { line, rows } = table;
  const placeOf = (index: number) => cellPlace(line, index + 1);
  const makePlan = (columns: readonly PlannedColumn[]) =>
    planTable({ columns, line, placeOf, firstRow: rows[0]?.cells, stated, common }, options.outsideRange, file.notes);

  if (!table.fields.some((field) => /^SPECTRAL_NM$/i.test(field))) {
    const plan = makePlan(columnsOf(table.fields));
    if (!plan.spectrum && !plan.lab && !plan.xyz) return undefined;
    checkSpectra(plan, table, file, options);
    const reader = createRowReader(plan, file);
    for (const { cells, line: at } of rows) reader.read(cells, at, (index) => cellPlace(at, index + 1));
    return [reader];
  }
  // each row brings its own wavelengths; rows of the same wavelengths share a plan
  const readers = new Map<string, RowReader>();
  for (const { cells, line: at } of rows) {
    const columns = columnsByWavelength(table.fields, cells, at, file);
    const key = columns.flatMap(({ role }) => (role.kind === 'wavelength' ? [role.label.wavelength] : [])).join(' ');
    let reader = readers.get(key);
    if (!reader) {
      const plan = makePlan(columns);
      checkSpectra(plan, table, file, options);
      reader = createRowReader(plan, file);
      readers.set(key, reader);
    }
    reader.read(withoutWavelengths(table.fields, cells), at, (index) =>
      cellPlace(at, originalIndex(table.fields, index) + 1),
    );
  }
  return [...readers.values()];
}

const isWavelengthField = (field: string) => /^SPECTRAL_NM$/i.test(field);

/** Columns in which each `SPECTRAL_NM`, `SPECTRAL_PCT` pair has become one, of the wavelength that the row gives. */
function columnsByWavelength(
  fields: readonly string[],
  cells: readonly string[],
  line: number,
  file: FileContext,
): PlannedColumn[] {
  let wavelength: { readonly value: number; readonly text: string } | undefined;
  return fields.flatMap((field, i) => {
    if (isWavelengthField(field)) {
      const number = parseFileNumber(cells[i], file.mark);
      if (number === undefined) throw notANumber(cells[i], file.mark, cellPlace(line, i + 1));
      // what can be no wavelength is no reading either
      wavelength = { value: number, text: cells[i] };
      return [];
    }
    const value = /^SPECTRAL_(PCT|DEC)$/i.exec(field);
    if (!value) return columnsOf([field]);
    if (wavelength === undefined) {
      throw new TintladderError('malformed', {
        path: cellPlace(line, i + 1),
        received: field,
        expected: 'SPECTRAL_NM before it',
      });
    }
    const decimals = wavelength.text.split('.')[1]?.length ?? 0;
    const scale = value[1].toUpperCase() === 'PCT' ? ('percent' as const) : ('fraction' as const);
    const label = { wavelength: wavelength.value, decimals, scale };
    wavelength = undefined;
    return [{ role: isWavelength(label.wavelength) ? { kind: 'wavelength', label } : { kind: 'text' }, label: field }];
  });
}

function withoutWavelengths(fields: readonly string[], cells: readonly string[]): string[] {
  return cells.filter((_, i) => !isWavelengthField(fields[i]));
}

function originalIndex(fields: readonly string[], index: number): number {
  let left = index;
  for (let i = 0; i < fields.length; i++) if (!isWavelengthField(fields[i]) && left-- === 0) return i;
  return index;
}

function refuseOtherSpectra({ fields, keywords, line }: DataTable): void {
  if (!fields.some((field) => /^SPEC(TRAL)?_/i.test(field) || parseWavelengthLabel(field))) return;
  for (const word of DESCRIPTIONS) {
    const described = keywords.get(word)?.find((text) => NO_REFLECTANCE.test(text));
    if (described) throw unsupportedQuantity(`${cellPlace(line, 1)} (${word})`, described);
  }
}

function checkSpectra(
  plan: TablePlan,
  { keywords, line }: DataTable,
  file: FileContext,
  { outsideRange }: ReaderOptions,
): void {
  if (!plan.spectrum) return;
  const bands = keywords.get('SPECTRAL_BANDS')?.[0];
  if (bands !== undefined && outsideRange === 'refuse' && Number(bands) !== plan.spectrum.columns.length) {
    throw new TintladderError('count-mismatch', {
      path: cellPlace(line, 1),
      received: plan.spectrum.columns.length,
      expected: `${bands} bands, as SPECTRAL_BANDS says`,
    });
  }
  const norm = Number(keywords.get('SPECTRAL_NORM')?.[0]);
  if (!plan.spectrum.scale && (norm === 1 || norm === 100))
    file.scale.state(norm === 1 ? 'fraction' : 'percent', `line ${line}`);
  if (!plan.spectrum.scale) {
    file.notes.add(
      'reflectance-assumed',
      'The file does not say what its spectra are; they were read as reflectance.',
      `line ${line}`,
    );
  }
}

function statedConditions({ keywords }: DataTable): StatedConditions {
  const last = (...words: string[]) =>
    words.map((word) => keywords.get(word)?.at(-1)).find((value) => value !== undefined);
  const weighting = keywords.get('WEIGHTING_FUNCTION') ?? [];
  const part = (word: RegExp) =>
    weighting
      .filter((text) => word.test(text))
      .at(-1)
      ?.replace(word, '');
  const illuminant = part(/illuminant/i) ?? last('ILLUMINANT');
  const observer = part(/observer/i) ?? last('OBSERVER');
  const specular = last('SPECULAR_COMPONENT', 'SPECULAR');
  const geometry = last('MEASUREMENT_GEOMETRY', 'GEOMETRY');
  const instrument = last('INSTRUMENTATION', 'INSTRUMENT');
  return {
    ...(illuminant ? { illuminant } : {}),
    ...(observer ? { observer } : {}),
    ...(specular ? { specular } : {}),
    ...(geometry ? { geometry } : {}),
    ...(instrument ? { instrument } : {}),
  };
}
