import type { Conditions } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable, ReflectanceScale } from '../measurement/measurement.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { createFileContext, type FileContext, settleFile } from '../table/file-context.js';
import { createTableReader, type TableReader } from '../table/table-reader.js';
import type { Notes } from '../text/notes.js';
import { gatherText, type TextSink } from '../text/text-sink.js';
import { orderWavelengths } from '../wavelength/wavelength-grid.js';
import { readCurve } from './curve.js';
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
export function createJcampDxReader(
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
  const blocks = readBlocks(text);
  const linked = blocks[0]?.records.get('BLOCKS');
  const spectra = blocks.filter(({ records }) => normaliseLabel(records.get('DATATYPE')?.value ?? '') !== 'LINK');
  if (linked && Number(linked.value) !== blocks.length - 1) {
    throw new TintladderError('count-mismatch', {
      path: `line ${linked.line}, column 1`,
      received: blocks.length - 1,
      expected: `${linked.value} blocks, as BLOCKS says`,
      hint: 'The file may be cut off; export it again.',
    });
  }
  const tables = spectra.map((block) => readBlock(block, file, options));
  return () => tables.map(({ table }) => table());
}

function readBlock(block: Block, file: FileContext, options: ReaderOptions): TableReader {
  const toNanometres = readAbscissaUnit(block);
  const scale = readOrdinateUnit(block);
  const points = readCurve(block);
  const given = points.map(({ x, line }) => ({
    wavelength: Math.round(x * toNanometres * 1e6) / 1e6,
    decimals: 6,
    path: `line ${line}`,
  }));
  const { grid, order } = orderWavelengths(given, options.outsideRange, file.notes);
  if (scale) file.scale.state(scale, `line ${block.line}`);
  const table = createTableReader({ line: block.line, grid }, file);
  const here = () => `line ${block.line}`;
  table.add(
    {
      name: block.title,
      replicate: '',
      line: block.line,
      values: Float64Array.from(order, (i) => points[i].y),
      conditions: readInstrument(block),
      fields: readFields(block),
    },
    {
      name: here,
      value: (i) => `line ${points[order[i]].line}, reading ${order[i] + 1}`,
      lab: here,
      xyz: here,
    },
  );
  return table;
}

/** What a block says beside its curve, as text under the labels of its records. */
function readFields(block: Block): Readonly<Record<string, string>> {
  const kept = [...block.records].filter(([key, record]) => !CURVE_RECORDS.has(key) && record.value !== '');
  return Object.fromEntries(kept.map(([, record]) => [record.label, fieldText(record)]));
}

function fieldText({ value, lines }: LabelledRecord): string {
  return [value, ...lines.map(({ text }) => text.trim())].join('\n').trim();
}

function readInstrument({ records }: Block): Pick<Conditions, 'instrument'> {
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
    hint: 'Readings evenly spaced in wavenumber are not evenly spaced in wavelength; resample them first.',
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
    received: '',
    expected: `##${label}=`,
  });
}
