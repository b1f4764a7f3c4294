import type { Grid } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { quantityTaken } from '../quantity/quantity-taken.js';
import { toReflectance } from '../quantity/to-reflectance.js';
import { notANumber, parseFileNumber } from '../text/file-number.js';
import { bandsOf, sumBands } from './bands.js';
import type { Triple } from './coordinates.js';
import type { FileContext } from './file-context.js';
import type { ColourPlan, SpectrumPlan } from './heading.js';
import { isLeftOut } from './left-out.js';
import { withModeOfName } from './mode-in-name.js';
import type { RawColour } from './raw-reading.js';
import { createRowConditions, type RowConditions } from './row-conditions.js';
import type { TablePlan } from './table-plan.js';
import { createTableReader, ownText, type TableReader } from './table-reader.js';

/** Gives the place of a cell, for faults and notes. */
export type PlaceOf = (index: number) => string;

/** Reads the rows of one table. */
export interface RowReader {
  readonly plan: TablePlan;
  /** Reads one row; `placeOf` gives the place of a cell for faults. */
  read(cells: readonly string[], line: number, placeOf: PlaceOf): void;
  /** The tables so far, one for each grid; once the scale is settled, with it. */
  tables(): readonly MeasurementTable[];
}

const NO_COLOURS: readonly ReadColour[] = [];
const NO_RAW_COLOURS: readonly RawColour[] = [];
const NO_FIELDS: Readonly<Record<string, string>> = Object.freeze({});

/** Reads the rows of one table as planned: a row gives one reading, or one for each of its spectra. */
export function createRowReader(plan: TablePlan, file: FileContext): RowReader {
  const { name, replicate, line, spectra, colours, commonName } = plan;
  const conditionsOf = createRowConditions(plan, file);
  const buffers = spectra.map(({ columns }) => new Float64Array(columns.length));
  const tables = new Map<string, TableReader>();

  const tableFor = (key: string, grid?: Grid, scale?: SpectrumPlan['scale']): TableReader => {
    let table = tables.get(key);
    if (!table) {
      table = createTableReader({ line, ...(grid ? { grid } : {}), scale }, file);
      tables.set(key, table);
    }
    return table;
  };
  const whole = spectra.map((spectrum, k) => ({ key: `${k}`, grid: spectrum.grid, scale: scaleOf(spectrum) }));

  return {
    plan,
    read(cells, at, placeOf) {
      const conditions = conditionsOf(cells, placeOf);
      const { quantity } = conditions;
      if (quantity && quantityTaken(quantity.quantity, file.options.quantity) === undefined) {
        return leaveOut(quantity.quantity ?? '', plan, placeOf, file);
      }
      const own = name === undefined ? (commonName ?? '') : cells[name].trim();
      const repeat = replicate === undefined ? '' : cells[replicate].trim();
      const common = { name: own, replicate: repeat, line: at };
      if (isLeftOut(common, () => placeOf(name ?? 0), file, plan.samplesOnly)) return;
      const read = colours.length === 0 ? NO_COLOURS : readColours(colours, cells, conditions, file, placeOf);
      const fields = readFields(cells, plan);
      const namePlace = name === undefined ? undefined : () => placeOf(name);
      let found = 0;
      for (let k = 0; k < spectra.length; k++) {
        const spectrum = spectra[k];
        const { columns, resampling } = spectrum;
        const bands = bandsOf(cells, columns);
        if (!bands) continue;
        found++;
        const { from, to } = bands;
        const buffer = buffers[k];
        readNumbers(cells, spectrum, bands, buffer, file, placeOf);
        const full = from === 0 && to === columns.length - 1;
        const part = full ? whole[k] : cutBands(spectrum, bands, k, placeOf, file);
        const values = resampling ? sumBands(buffer, resampling) : full ? buffer : buffer.slice(from, to + 1);
        const colourList =
          read.length === 0 ? NO_RAW_COLOURS : belonging(read, conditions.spectrumModes[k], spectra.length);
        tableFor(part.key, part.grid, part.scale).add(
          {
            name: own,
            replicate: repeat,
            line: at,
            fields,
            values,
            colours: colourList,
            conditions: withModeOfName(conditions.spectra[k], own, () => placeOf(name ?? 0), file.notes),
          },
          { name: namePlace, value: (i) => placeOf(columns[resampling?.[i]?.first ?? i + from]) },
        );
      }
      if (found > 0) return;
      if (read.length === 0) throw noColour(plan, placeOf);
      for (const mode of new Set(read.map((one) => one.mode))) {
        const own = read.filter((one) => one.mode === mode);
        tableFor('colours').add(
          { ...common, fields, colours: own.map(({ colour }) => colour), conditions: conditions.alone[own[0].index] },
          { name: namePlace, value: () => placeOf(0) },
        );
      }
    },
    tables: () => (tables.size > 0 ? [...tables.values()].map((table) => table.table()) : [{ line, count: 0 }]),
  };
}

/** What was turned into reflectance is in fractions, whatever the file states of its own values. */
function scaleOf({ turn, scale }: SpectrumPlan): SpectrumPlan['scale'] {
  return turn ? 'fraction' : scale;
}

interface ReadColour {
  /** Number of the colour in its table. */
  readonly index: number;
  readonly colour: RawColour;
  readonly mode: RowConditions['colourModes'][number];
}

/** The colours that belong to a spectrum: all, unless several spectra are told apart by a mode that a colour states otherwise. */
function belonging(read: readonly ReadColour[], mode: ReadColour['mode'], spectra: number): readonly RawColour[] {
  const kept =
    spectra === 1 ? read : read.filter((one) => one.mode === undefined || mode === undefined || one.mode === mode);
  return kept.map(({ colour }) => colour);
}

function leaveOut(quantity: string, plan: TablePlan, placeOf: PlaceOf, file: FileContext): void {
  file.leftOut++;
  const message = (count: number) =>
    `${count === 1 ? 'One row holds' : `${count} rows hold`} another quantity than reflectance (the first: ${quantity}); left out.`;
  file.notes.count('other-quantities-left-out', placeOf(plan.kindColumns[0] ?? 0), message);
}

function noColour({ spectra, colours }: TablePlan, placeOf: PlaceOf): TintladderError {
  const column = colours[0]?.indices[0] ?? spectra[0]?.columns[0] ?? 0;
  return new TintladderError('not-a-number', { path: placeOf(column), received: '', expected: 'a reading' });
}

/** Fills `values` in the order of wavelength. */
function readNumbers(
  cells: readonly string[],
  { columns, turn }: SpectrumPlan,
  { from, to }: { readonly from: number; readonly to: number },
  values: Float64Array,
  { style }: FileContext,
  placeOf: PlaceOf,
): void {
  for (let i = from; i <= to; i++) {
    const column = columns[i];
    const value = parseFileNumber(cells[column], style);
    if (value === undefined) throw notANumber(cells[column], style, placeOf(column));
    values[i] = turn ? toReflectance(value, turn) : value;
  }
}

/** The part of a grid that a row fills; empty bands at its ends are cut and noted. */
function cutBands(
  spectrum: SpectrumPlan,
  { from, to }: { readonly from: number; readonly to: number },
  k: number,
  placeOf: PlaceOf,
  { notes, style }: FileContext,
) {
  const { grid, columns, resampling } = spectrum;
  const empty = from > 0 ? 0 : columns.length - 1;
  if (resampling || to - from < 1) throw notANumber('', style, placeOf(columns[empty]));
  notes.count(
    'empty-bands-cut',
    placeOf(columns[empty]),
    (count) =>
      `${count === 1 ? 'A spectrum has' : `${count} spectra have`} no readings at the ends of the range; the empty bands were cut.`,
  );
  const cut = { start: grid.start + from * grid.step, step: grid.step, count: to - from + 1 };
  return { key: `${k} ${from} ${to}`, grid: cut, scale: scaleOf(spectrum) };
}

function readColours(
  colours: readonly ColourPlan[],
  cells: readonly string[],
  conditions: RowConditions,
  file: FileContext,
  placeOf: PlaceOf,
): ReadColour[] {
  return colours.flatMap((colour, c) => readColour(colour, c, cells, conditions, file, placeOf));
}

/** A colour of a row; none where all three cells are empty. */
function readColour(
  { space, indices, white }: ColourPlan,
  c: number,
  cells: readonly string[],
  { colours, colourModes }: RowConditions,
  { style }: FileContext,
  placeOf: PlaceOf,
): ReadColour[] {
  if (indices.every((index) => cells[index].trim() === '')) return [];
  const read = (index: number) => {
    const value = parseFileNumber(cells[index], style);
    if (value === undefined) throw notANumber(cells[index], style, placeOf(index));
    return value;
  };
  const values: Triple = [read(indices[0]), read(indices[1]), read(indices[2])];
  const place = (i: number) => placeOf(indices[i]);
  return [{ index: c, colour: { space, values, viewing: colours[c], white, place }, mode: colourModes[c] }];
}

function readFields(cells: readonly string[], { fieldColumns }: TablePlan): Readonly<Record<string, string>> {
  if (fieldColumns.length === 0) return NO_FIELDS;
  // fromEntries makes own properties of any name, `__proto__` included
  return Object.fromEntries(fieldColumns.map(({ index, label }) => [label, ownText(cells[index])]));
}
