import type { Conditions } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import { toConditions } from '../conditions/stated-conditions.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { type DecimalMark, notANumber, parseFileNumber } from '../text/file-number.js';
import type { Triple } from './coordinates.js';
import type { FileContext } from './file-context.js';
import type { TablePlan } from './table-plan.js';
import { createTableReader, ownText } from './table-reader.js';

/** Reads the rows of one table. */
export interface RowReader {
  readonly plan: TablePlan;
  /** Reads one row; `placeOf` gives the place of a cell for faults. */
  read(cells: readonly string[], line: number, placeOf: (index: number) => string): void;
  /** The table so far; once the scale is settled, with it. */
  table(): MeasurementTable;
}

const NO_FIELDS: Readonly<Record<string, string>> = Object.freeze({});

/** Reads the rows of one table as planned. */
export function createRowReader(plan: TablePlan, file: FileContext): RowReader {
  const { spectrum, lab, xyz, name, replicate, line } = plan;
  const columns = spectrum?.columns ?? new Int32Array(0);
  const values = new Float64Array(columns.length);
  if (spectrum?.scale) file.scale.state(spectrum.scale, `line ${line}`);
  const table = createTableReader({ line, ...(spectrum ? { grid: spectrum.grid } : {}) }, file);

  return {
    plan,
    read(cells, at, placeOf) {
      const present = hasSpectrum(cells, plan);
      if (present) readSpectrum(cells, columns, values, file.mark, placeOf);
      const own = name === undefined ? '' : cells[name].trim();
      const ownLab = lab && readTriple(cells, lab.indices, file.mark, placeOf);
      const ownXyz = xyz && readTriple(cells, xyz.indices, file.mark, placeOf);
      if (!present && !ownLab && !ownXyz) throw noColour(plan, placeOf);
      table.add(
        {
          name: own,
          replicate: replicate === undefined ? '' : cells[replicate].trim(),
          line: at,
          ...(present ? { values } : {}),
          ...(ownLab ? { lab: ownLab } : {}),
          ...(ownXyz ? { xyz: ownXyz } : {}),
          conditions: readConditions(cells, plan),
          fields: readFields(cells, plan),
        },
        {
          ...(name === undefined ? {} : { name: () => placeOf(name) }),
          value: (i) => placeOf(columns[i]),
          lab: (i) => placeOf(lab?.indices[i] ?? 0),
          xyz: (i) => placeOf(xyz?.indices[i] ?? 0),
        },
      );
    },
    table: table.table,
  };
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

/** Fills `values` in the order of wavelength. */
function readSpectrum(
  cells: readonly string[],
  columns: Int32Array,
  values: Float64Array,
  mark: DecimalMark,
  placeOf: (index: number) => string,
): void {
  for (let i = 0; i < columns.length; i++) {
    const column = columns[i];
    const value = parseFileNumber(cells[column], mark);
    if (value === undefined) throw notANumber(cells[column], mark, placeOf(column));
    values[i] = value;
  }
}

/** Three coordinates of a row; `undefined` where all three cells are empty. */
function readTriple(
  cells: readonly string[],
  indices: readonly [number, number, number],
  mark: DecimalMark,
  placeOf: (index: number) => string,
): Triple | undefined {
  if (indices.every((index) => cells[index].trim() === '')) return undefined;
  const read = (index: number) => {
    const value = parseFileNumber(cells[index], mark);
    if (value === undefined) throw notANumber(cells[index], mark, placeOf(index));
    return value;
  };
  return [read(indices[0]), read(indices[1]), read(indices[2])];
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
