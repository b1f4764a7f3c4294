import type { Conditions } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import { conditionKey } from '../conditions/condition-key.js';
import { toConditions } from '../conditions/stated-parts.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { quantityTaken } from '../quantity/quantity-taken.js';
import { parseQuantity } from '../quantity/quantity-text.js';
import { noteTurned, toReflectance } from '../quantity/to-reflectance.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { sumBands } from '../table/bands.js';
import type { FileContext } from '../table/file-context.js';
import { isLeftOut } from '../table/left-out.js';
import { NO_CONTEXT, readRemarks } from '../table/preamble.js';
import { createTableReader, type TableReader } from '../table/table-reader.js';
import { wholeTextReader } from '../table/whole-text-reader.js';
import type { Notes } from '../text/notes.js';
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
export const createJcampDxReader = /* @__PURE__ */ wholeTextReader(readText);

function readText(text: string, file: FileContext): () => readonly MeasurementTable[] {
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
  const tables = spectra.flatMap((block) => readBlock(block, file));
  return () => tables.map(({ table }) => table());
}

function readBlock(block: Block, file: FileContext): TableReader[] {
  const { notes, options } = file;
  const here = () => `line ${block.line}`;
  if (isLeftOut({ name: block.title, replicate: '', line: block.line }, here, file, true)) return [];
  const toNanometres = readAbscissaUnit(block);
  const { scale, taken } = readOrdinateUnit(block, file);
  const points = readCurve(block, notes);
  const given = points.map(({ x, line }) => ({
    wavelength: Math.round(x * toNanometres * 1e6) / 1e6,
    decimals: 6,
    path: `line ${line}`,
  }));
  const { grid, order, resampling } = orderWavelengths(given, options, notes);
  const ordered = Float64Array.from(order, (i) =>
    taken === 'reflectance' ? points[i].y : toReflectance(points[i].y, taken),
  );
  const table = createTableReader({ line: block.line, grid, scale }, file);
  table.add(
    {
      name: block.title,
      replicate: '',
      line: block.line,
      values: resampling ? sumBands(ordered, resampling) : ordered,
      colours: [],
      conditions: readConditions(block, notes),
      fields: readFields(block),
    },
    { name: here, value: (i) => `line ${points[order[i] ?? 0].line}, reading ${(order[i] ?? 0) + 1}` },
  );
  return [table];
}

/** What a block says beside its curve, as text under the labels of its records. */
function readFields(block: Block): Readonly<Record<string, string>> {
  const kept = [...block.records].filter(([key, record]) => !CURVE_RECORDS.has(key) && record.value !== '');
  return Object.fromEntries(kept.map(([, record]) => [record.label, fieldText(record)]));
}

function fieldText({ value, lines }: LabelledRecord): string {
  return [value, ...lines.map(({ text }) => text.trim())].join('\n').trim();
}

/** Conditions in records of any name that says one, such as `SPECTROMETER/DATA SYSTEM` or `$SPECULAR COMPONENT`. */
function readConditions({ records }: Block, notes: Notes): Conditions {
  const remarks = [...records.values()].flatMap(({ label, value, line }) => {
    const key = normaliseLabel(label);
    if (CURVE_RECORDS.has(key) || value === '') return [];
    const named = INSTRUMENT_RECORDS.includes(key) ? 'instrument' : label.replace(/^[$.]+/, '');
    return conditionKey(named).length > 0 ? [{ key: named, value, place: `line ${line}, column 1` }] : [];
  });
  return toConditions(readRemarks(remarks, NO_CONTEXT, notes).stated);
}

function readAbscissaUnit(block: Block): number {
  const record = need(block, 'XUNITS');
  const unit = record.value
    .toUpperCase()
    .replace(/WAVELENGTHS?/, '')
    .replace(/[^A-Zµμ/\d]/g, '');
  if (/^(NANOMETERS?|NANOMETRES?|NM)$/.test(unit)) return 1;
  if (/^(MICROMETERS?|MICROMETRES?|MICRONS?|[UµμM]M)$/.test(unit) && unit !== 'MM') return 1000;
  throw new TintladderError('unsupported-quantity', {
    path: `line ${record.line}, column 1`,
    received: record.value,
    expected: 'wavelengths in NANOMETERS or MICROMETERS',
    hint: 'Readings evenly spaced in wavenumber are not evenly spaced in wavelength; resample them first.',
  });
}

/** Reflectance in fractions of 1 (as the standard has it) or in percent; what only says reflectance is left to the values. */
function readOrdinateUnit(block: Block, { options, notes }: FileContext) {
  const record = need(block, 'YUNITS');
  const place = `line ${record.line}, column 1`;
  const { quantity, scale, rest } = parseQuantity(record.value);
  const stated = quantity ?? (rest === '' && scale ? 'reflectance' : undefined);
  const taken = stated || options.quantity ? quantityTaken(stated, options.quantity) : undefined;
  if (taken === undefined) throw unsupportedQuantity(place, record.value, quantity);
  if (taken === 'reflectance') return { taken, scale };
  noteTurned(taken, place, notes);
  return { taken, scale: 'fraction' as const };
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
