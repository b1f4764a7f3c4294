import { TintladderError } from '../../core/index.js';
import type { FileContext } from '../file-context.js';
import type { MeasurementTable, ReflectanceScale } from '../measurement.js';
import type { CheckedReadOptions } from '../read-options.js';
import { createRowReader, type RowReader } from '../row-reader.js';
import { type TablePlan, unsupportedQuantity } from '../table-plan.js';
import { orderWavelengths } from '../wavelength-grid.js';
import { type CurvePoint, readCurve } from './curve.js';
import { type Block, type LabelledRecord, normaliseLabel, readBlocks } from './records.js';

/** Records that describe the curve rather than the sample. */
const CURVE_RECORDS = new Set(
  'JCAMPDX DATATYPE DATACLASS BLOCKS BLOCKID XUNITS YUNITS XFACTOR YFACTOR FIRSTX LASTX FIRSTY DELTAX NPOINTS MAXX MINX MAXY MINY RESOLUTION XYDATA XYPOINTS XLABEL YLABEL'.split(
    ' ',
  ),
);
const INSTRUMENT_RECORDS = ['SPECTROMETERDATASYSTEM', 'INSTRUMENT'];

/**
 * Reads JCAMP-DX 4.24 and 5: single and linked blocks with `XYDATA` in the ASDF forms or `XYPOINTS`, of reflectance over wavelength.
 *
 * @throws TintladderError `unsupported-quantity` for other quantities, units of the abscissa or data classes; `no-header` for a missing
 * record; `count-mismatch`, `truncated`, `malformed`, and the faults of its values
 * @see McDonald & Wilks (1988), Appl. Spectrosc. 42, 151-162; Lampen, Hillig, Davies & Linscheid (1994), Appl. Spectrosc. 48, 1545-1552
 */
export function readJcampDx(
  text: string,
  file: FileContext,
  options: CheckedReadOptions,
): () => readonly MeasurementTable[] {
  const blocks = readBlocks(text);
  const linked = blocks[0]?.records.get('BLOCKS');
  const spectra = blocks.filter(({ records }) => normaliseLabel(records.get('DATATYPE')?.value ?? '') !== 'LINK');
  if (linked && Number(linked.value) !== blocks.length - 1) {
    throw new TintladderError('count-mismatch', {
      path: `line ${linked.line}, column 1`,
      received: `the start of ${blocks.length - 1} blocks`,
      expected: `${linked.value}, as BLOCKS says,`,
      hint: 'The file may be cut off; export it again.',
    });
  }
  file.mark.value = '.';
  const readers = spectra.map((block) => readBlock(block, file, options));
  return () => readers.map((reader) => reader.table());
}

function readBlock(block: Block, file: FileContext, options: CheckedReadOptions): RowReader {
  const toNanometres = readAbscissaUnit(block);
  const scale = readOrdinateUnit(block);
  const points = readCurve(block);
  const given = points.map(({ x, line }) => ({
    wavelength: Math.round(x * toNanometres * 1e6) / 1e6,
    decimals: 6,
    path: `line ${line}`,
  }));
  const { grid, order } = orderWavelengths(given, options.outsideRange, file.notes);
  const fields = [...block.records]
    .filter(([key, record]) => !CURVE_RECORDS.has(key) && record.value !== '')
    .map(([, record]) => record);
  const plan: TablePlan = {
    line: block.line,
    width: 1 + points.length + fields.length,
    name: 0,
    spectrum: { grid, columns: Int32Array.from(order, (i) => i + 1), ...(scale ? { scale } : {}) },
    conditionColumns: [],
    fieldColumns: fields.map(({ label }, i) => ({ index: 1 + points.length + i, label })),
    stated: {},
    common: readInstrument(block),
  };
  const reader = createRowReader(plan, file);
  const cells = [block.title, ...points.map(({ y }) => String(y)), ...fields.map(fieldText)];
  reader.read(
    cells,
    block.line,
    (index) => `line ${pointLine(points, index, block)}${index > 0 ? `, reading ${index}` : ''}`,
  );
  return reader;
}

function pointLine(points: readonly CurvePoint[], index: number, block: Block): number {
  return points[index - 1]?.line ?? block.line;
}

function fieldText({ value, lines }: LabelledRecord): string {
  return [value, ...lines.map(({ text }) => text.trim())].join('\n').trim();
}

function readInstrument({ records }: Block): TablePlan['common'] {
  const instrument = INSTRUMENT_RECORDS.map((key) => records.get(key)?.value).find((value) => value);
  return instrument ? { instrument } : {};
}

function readAbscissaUnit(block: Block): number {
  const record = need(block, 'XUNITS');
  const unit = normaliseLabel(record.value);
  if (/^(NANOMETERS?|NANOMETRES?|NM)$/.test(unit)) return 1;
  if (/^(MICROMETERS?|MICROMETRES?|MICRONS?|UM)$/.test(unit)) return 1000;
  throw new TintladderError('unsupported-quantity', {
    path: `line ${record.line}, column 1`,
    received: record.value,
    expected: 'wavelengths in NANOMETERS or MICROMETERS',
    hint: 'Readings even in wavenumbers are uneven in wavelength; resample them first.',
  });
}

/** Reflectance in fractions of 1 (as the standard has it) or in percent; what only says reflectance is left to the values. */
function readOrdinateUnit(block: Block): ReflectanceScale | undefined {
  const record = need(block, 'YUNITS');
  const unit = record.value.toUpperCase();
  if (!/\bREFLECTANCE\b|^%?\s*R$/.test(unit) || /LOG|1\/R/.test(unit)) {
    throw unsupportedQuantity(`line ${record.line}, column 1`, record.value);
  }
  return /%|PERCENT/.test(unit) ? 'percent' : undefined;
}

/** @throws TintladderError `no-header` naming the missing record */
function need({ records, line }: Block, label: string): LabelledRecord {
  const record = records.get(label);
  if (record) return record;
  throw new TintladderError('no-header', {
    path: `line ${line}, column 1`,
    received: `a block without ##${label}=`,
    expected: `##${label}=`,
  });
}
