import { type Conditions, createSpectrum, type Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import { readTriple, toLab, toXyz } from './coordinate-cells.js';
import { type FileContext, releaseWaiting } from './file-context.js';
import { notANumber, parseFileNumber } from './file-number.js';
import type { Measurement, MeasurementTable, ReflectanceScale } from './measurement.js';
import type { ScaleDecision } from './reflectance-scale.js';
import type { TablePlan } from './table-plan.js';
import { toConditions } from './viewing-text.js';

export interface RowReader {
  readonly plan: TablePlan;
  /** Reads one row; `placeOf` gives the place of a cell for errors. */
  read(cells: readonly string[], line: number, placeOf: (index: number) => string): void;
  /** The table so far; once the scale is settled, with it. */
  table(): MeasurementTable;
}

const NO_FIELDS: Readonly<Record<string, string>> = Object.freeze({});
/** Reads the rows of one table as planned. */
export function createRowReader(plan: TablePlan, file: FileContext): RowReader {
  const { spectrum } = plan;
  const columns = spectrum?.columns ?? new Int32Array(0);
  const raw = new Float64Array(columns.length);
  let count = 0;
  if (spectrum?.scale) file.scale.state(spectrum.scale, `line ${plan.line}`);

  const finish = (parts: Omit<Measurement, 'spectrum'>, values: Float64Array | undefined): Measurement => {
    if (!values || !spectrum) return parts;
    return { ...parts, spectrum: toSpectrum(values, spectrum.grid, file.scale.scale ?? 'fraction') };
  };

  return {
    plan,
    read(cells, line, placeOf) {
      const present = hasSpectrum(cells, plan);
      const highest = present ? readSpectrum(cells, columns, raw, file, placeOf) : 0;
      count++;
      const parts = readParts(cells, line, placeOf, plan, file);
      if (!present && !parts.lab && !parts.xyz) throw noColour(plan, placeOf);
      if (present && !file.scale.judge(highest, () => placeOf(columns[indexOf(raw, highest)]))) {
        const kept = raw.slice();
        file.waiting.push(() => finish(parts, kept));
        return;
      }
      if (present) refuseImpossible(raw, columns, highest, file.scale, placeOf);
      if (file.waiting.length > 0) {
        if (!present && file.scale.scale === undefined) {
          file.waiting.push(() => parts);
          return;
        }
        releaseWaiting(file);
      }
      file.emit(present && spectrum ? finish(parts, raw) : parts);
    },
    table() {
      const { scale, from } = file.scale;
      return {
        line: plan.line,
        count,
        ...(spectrum ? { grid: spectrum.grid } : {}),
        ...(spectrum && scale ? { scale, scaleFrom: from } : {}),
      };
    },
  };
}

function toSpectrum(values: Float64Array, grid: { start: number; step: number }, scale: ReflectanceScale): Spectrum {
  return createSpectrum({ start: grid.start, step: grid.step, values, scale });
}

function noColour({ spectrum, lab, xyz }: TablePlan, placeOf: (index: number) => string): TintladderError {
  const column = lab?.indices[0] ?? xyz?.indices[0] ?? spectrum?.columns[0] ?? 0;
  return new TintladderError('not-a-number', { path: placeOf(column), received: '', expected: 'a reading' });
}

/** A row with no reading at all at any wavelength has no spectrum, provided that it has another colour. */
function hasSpectrum(cells: readonly string[], plan: TablePlan): boolean {
  if (!plan.lab && !plan.xyz) return plan.spectrum !== undefined;
  if (!plan.spectrum) return false;
  const { columns } = plan.spectrum;
  if (cells[columns[0]]?.trim() !== '') return true;
  for (const column of columns) if (cells[column]?.trim() !== '') return true;
  return false;
}

/** Fills `raw` in the order of wavelength and returns its highest value. */
function readSpectrum(
  cells: readonly string[],
  columns: Int32Array,
  raw: Float64Array,
  file: FileContext,
  placeOf: (index: number) => string,
): number {
  const { mark } = file;
  let highest = 0;
  for (let i = 0; i < columns.length; i++) {
    const column = columns[i];
    const value = parseFileNumber(cells[column], mark);
    if (value === undefined) throw notANumber(cells[column], mark, placeOf(column));
    if (value < 0) {
      throw new TintladderError('reflectance-out-of-range', {
        path: placeOf(column),
        received: value,
        expected: 'a reflectance of 0 or more',
      });
    }
    if (value > highest) highest = value;
    raw[i] = value;
  }
  return highest;
}

function indexOf(values: Float64Array, value: number): number {
  return Math.max(0, values.indexOf(value));
}

/** Refuses readings beyond twice the perfect diffuser, and leaps between neighbours that only a change of scale explains. */
function refuseImpossible(
  raw: Float64Array,
  columns: Int32Array,
  highest: number,
  scale: ScaleDecision,
  placeOf: (index: number) => string,
): void {
  const percent = scale.scale === 'percent';
  if (highest > (percent ? 200 : 2)) {
    throw new TintladderError('reflectance-out-of-range', {
      path: placeOf(columns[indexOf(raw, highest)]),
      received: highest,
      expected: percent ? 'a percentage from 0 to 200' : 'a fraction from 0 to 2',
    });
  }
  if (!percent || scale.from === 'stated') return;
  for (let i = 1; i < raw.length; i++) {
    const low = Math.min(raw[i - 1], raw[i]);
    const high = Math.max(raw[i - 1], raw[i]);
    // no pigment's reflectance rises fortyfold from one reading to the next
    if (low < 1 && high > 10 && high > 40 * low && low > 0) {
      throw new TintladderError('scale-mixed', {
        path: placeOf(columns[raw[i] === low ? i : i - 1]),
        received: `${low} beside ${high}`,
        expected: 'one scale throughout a spectrum',
        hint: "If the values are right, pass scale: 'percent'.",
      });
    }
  }
}

function readParts(
  cells: readonly string[],
  line: number,
  placeOf: (index: number) => string,
  plan: TablePlan,
  file: FileContext,
): Omit<Measurement, 'spectrum'> {
  file.count++;
  const own = plan.name === undefined ? '' : cells[plan.name].trim();
  if (own === '' && plan.name !== undefined) {
    file.notes.add(
      'name-missing',
      'A reading has no name; such readings are called by their number in the file.',
      placeOf(plan.name),
    );
  }
  const replicate = plan.replicate === undefined ? '' : cells[plan.replicate].trim();
  const lab = plan.lab && readTriple(cells, plan.lab.indices, file.mark, placeOf);
  const xyz = plan.xyz && readTriple(cells, plan.xyz.indices, file.mark, placeOf);
  const conditions = readConditions(cells, plan);
  if ((lab || xyz) && !conditions.viewing) {
    file.notes.add(
      'viewing-not-stated',
      'The file does not say which illuminant and observer its colour values belong to.',
      `line ${plan.line}`,
    );
  }
  return {
    name: own === '' ? String(file.count) : ownText(own),
    ...(lab ? { lab: toLab(lab, plan, placeOf) } : {}),
    ...(xyz ? { xyz: toXyz(xyz, plan, placeOf) } : {}),
    conditions,
    ...(replicate === '' ? {} : { replicate: ownText(replicate) }),
    fields: readFields(cells, plan),
    line,
  };
}

/** Shorter texts are copied out of their block anyway. */
const SHARED_LENGTH = 13;

/** A text of its own: a slice would keep the whole block that it was cut from in memory. */
function ownText(text: string): string {
  return text.length < SHARED_LENGTH ? text : ` ${text}`.slice(1);
}

function readFields(cells: readonly string[], { fieldColumns }: TablePlan): Readonly<Record<string, string>> {
  if (fieldColumns.length === 0) return NO_FIELDS;
  // fromEntries makes own properties of any name, `__proto__` included
  return Object.fromEntries(fieldColumns.map(({ index, label }) => [label, ownText(cells[index])]));
}

function readConditions(cells: readonly string[], plan: TablePlan): Conditions {
  const { conditionColumns, common, stated, lab, xyz } = plan;
  const viewing = lab?.viewing ?? xyz?.viewing;
  if (conditionColumns.length === 0 && !viewing) return common;
  const parts = { ...stated };
  for (const { index, part } of conditionColumns) if (cells[index].trim() !== '') parts[part] = cells[index].trim();
  const conditions = { ...common, ...toConditions(parts) };
  return viewing ? { ...conditions, viewing } : conditions;
}
