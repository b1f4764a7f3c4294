import type { Conditions, Grid, Viewing } from '../../colorimetry/index.js';
import type { StatedConditions } from '../conditions/stated-conditions.js';
import type { ReflectanceScale } from '../measurement/measurement.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import type { Notes } from '../text/notes.js';
import { orderWavelengths } from '../wavelength/wavelength-grid.js';
import { type ColumnRole, type Coordinate, columnRole } from './column-role.js';

/** Three columns that make one colour. */
export interface ColourColumns {
  readonly indices: readonly [number, number, number];
  readonly viewing?: Viewing;
}

/** Which column of a table holds what. */
export interface TablePlan {
  /** Line of the heading. */
  readonly line: number;
  /** Number of cells in a full row. */
  readonly width: number;
  readonly name?: number;
  readonly replicate?: number;
  readonly spectrum?: {
    readonly grid: Grid;
    /** Column of each reading, in the order of wavelength. */
    readonly columns: Int32Array;
    readonly scale?: ReflectanceScale;
  };
  readonly lab?: ColourColumns;
  readonly xyz?: ColourColumns;
  readonly conditionColumns: readonly { readonly index: number; readonly part: keyof StatedConditions }[];
  readonly fieldColumns: readonly { readonly index: number; readonly label: string }[];
  /** What the file says of all the table's readings. */
  readonly stated: StatedConditions;
  readonly common: Conditions;
}

/** A column before a plan: what it holds, and what it is called. */
export interface PlannedColumn {
  readonly role: ColumnRole;
  readonly label: string;
}

/** What a plan is made from. */
export interface Heading {
  readonly columns: readonly PlannedColumn[];
  readonly line: number;
  /** Place of a heading cell, for errors. */
  readonly placeOf: (index: number) => string;
  /** A row of data, to tell text from numbers where no heading names the sample; absent when there is none. */
  readonly firstRow?: readonly string[];
  readonly stated: StatedConditions;
  readonly common: Conditions;
  /** Column that holds the names, where the layout says so rather than the heading. */
  readonly nameColumn?: number;
}

/** Columns of a heading, by what each cell says. */
export function columnsOf(cells: readonly string[]): PlannedColumn[] {
  return cells.map((label) => ({ role: columnRole(label), label }));
}

/**
 * Plans a table from its headings.
 *
 * @throws TintladderError `unsupported-quantity`, `grid-invalid`, `wavelength-repeated`, `wavelengths-uneven`
 */
export function planTable(heading: Heading, outsideRange: 'refuse' | 'drop', notes: Notes): TablePlan {
  const { columns, line, placeOf, stated, common } = heading;
  const roles = columns.map(({ role }) => role);
  const used = new Set<number>();
  const spectrum = planSpectrum(roles, placeOf, outsideRange, notes);
  roles.forEach(({ kind }, i) => {
    if (kind === 'wavelength') used.add(i);
  });
  const lab = findTriple(roles, ['L', 'a', 'b'], used);
  const xyz = findTriple(roles, ['X', 'Y', 'Z'], used);
  const conditionColumns = roles.flatMap((role, index) => {
    return role.kind === 'condition' ? [{ index, part: role.part }] : [];
  });
  const replicate = roles.findIndex(({ kind }) => kind === 'replicate');
  if (replicate >= 0) used.add(replicate);
  const name = heading.nameColumn ?? findName(roles, heading, used);
  if (name !== undefined) used.add(name);
  else
    notes.add('names-numbered', 'The file has no column of names; the readings are numbered in its order.', placeOf(0));
  const fieldColumns = labelled(columns, used);
  if (fieldColumns.length > 0) {
    const labels = fieldColumns.map(({ label }) => label);
    const list =
      labels.length > 8 ? `${labels.slice(0, 8).join(', ')} and ${labels.length - 8} more` : labels.join(', ');
    notes.add(
      'columns-kept-as-text',
      `These columns hold no colour that is read; they are kept as text: ${list}.`,
      placeOf(fieldColumns[0].index),
    );
  }
  return {
    line,
    width: columns.length,
    ...(name === undefined ? {} : { name }),
    ...(replicate >= 0 ? { replicate } : {}),
    ...(spectrum ? { spectrum } : {}),
    ...(lab ? { lab } : {}),
    ...(xyz ? { xyz } : {}),
    conditionColumns,
    fieldColumns,
    stated,
    common,
  };
}

function planSpectrum(
  roles: readonly ColumnRole[],
  placeOf: (index: number) => string,
  outsideRange: 'refuse' | 'drop',
  notes: Notes,
): TablePlan['spectrum'] {
  const found = roles.flatMap((role, index) => (role.kind === 'wavelength' ? [{ index, ...role.label }] : []));
  if (found.length === 0) return undefined;
  const other = found.find(({ unsupported }) => unsupported !== undefined);
  if (other) throw unsupportedQuantity(placeOf(other.index), other.unsupported ?? '');
  const given = found.map(({ index, wavelength, decimals }) => ({ wavelength, decimals, path: placeOf(index) }));
  const { grid, order } = orderWavelengths(given, outsideRange, notes);
  const scale = found.find((label) => label.scale !== undefined)?.scale;
  return { grid, columns: Int32Array.from(order, (i) => found[i].index), ...(scale ? { scale } : {}) };
}

/** The first three columns that make a colour under one viewing; they leave the columns that remain for text. */
function findTriple(
  roles: readonly ColumnRole[],
  coordinates: readonly [Coordinate, Coordinate, Coordinate],
  used: Set<number>,
): ColourColumns | undefined {
  const find = (coordinate: Coordinate, set: string) =>
    roles.findIndex((role) => role.kind === 'coordinate' && role.coordinate === coordinate && role.set === set);
  for (const role of roles) {
    if (role.kind !== 'coordinate' || role.coordinate !== coordinates[0]) continue;
    const indices = [
      find(coordinates[0], role.set),
      find(coordinates[1], role.set),
      find(coordinates[2], role.set),
    ] as const;
    if (indices.includes(-1)) continue;
    for (const index of indices) used.add(index);
    return { indices, ...(role.viewing ? { viewing: role.viewing } : {}) };
  }
  return undefined;
}

function findName(
  roles: readonly ColumnRole[],
  { columns, firstRow }: Heading,
  used: ReadonlySet<number>,
): number | undefined {
  let best: { index: number; rank: number } | undefined;
  roles.forEach((role, index) => {
    if (role.kind === 'name' && (best === undefined || role.rank < best.rank)) best = { index, rank: role.rank };
  });
  if (best) return best.index;
  const free = columns.map((_, index) => index).filter((index) => !used.has(index));
  const text = (index: number) => firstRow?.[index] !== undefined && /\p{L}/u.test(firstRow[index]);
  return free.find(text);
}

/** Labels of the columns kept as text: the file's own, made distinct; a column without one is called by its number. */
function labelled(columns: readonly PlannedColumn[], used: ReadonlySet<number>): { index: number; label: string }[] {
  const taken = new Set<string>();
  return columns.flatMap(({ label: cell }, index) => {
    if (used.has(index)) return [];
    const own = cell.trim() === '' ? `column ${index + 1}` : cell.trim();
    let label = own;
    for (let n = 2; taken.has(label); n++) label = `${own} (${n})`;
    taken.add(label);
    return [{ index, label }];
  });
}
