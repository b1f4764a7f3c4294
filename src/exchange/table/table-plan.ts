import { noteNotUnderstood } from '../conditions/read-condition.js';
import type { ConditionPart, StatedParts } from '../conditions/stated-parts.js';
import type { ReaderOptions } from '../measurement/format-contract.js';
import type { Notes } from '../text/notes.js';
import { planColours } from './colour-plan.js';
import { columnRole } from './column-role.js';
import type { ColourPlan, Heading, PlannedColumn, SpectrumPlan } from './heading.js';
import { planNames } from './name-plan.js';
import { planSpectra } from './spectrum-plan.js';

/** Which column of a table holds what. */
export interface TablePlan {
  /** Line of the heading. */
  readonly line: number;
  /** Number of cells in a full row. */
  readonly width: number;
  readonly name?: number;
  /** Name of all readings, where the file states one above the table. */
  readonly commonName?: string;
  readonly replicate?: number;
  readonly spectra: readonly SpectrumPlan[];
  readonly colours: readonly ColourPlan[];
  readonly conditionColumns: readonly { readonly index: number; readonly about: readonly ConditionPart[] }[];
  /** Columns that say what kind of values a row holds. */
  readonly kindColumns: readonly number[];
  readonly fieldColumns: readonly { readonly index: number; readonly label: string }[];
  /** The file says that every row is a sample, whatever its name. */
  readonly samplesOnly: boolean;
  /** What the file says of all the table's readings. */
  readonly stated: StatedParts;
}

/** Columns of a heading, by what each cell says. */
export function columnsOf(cells: readonly string[]): PlannedColumn[] {
  return cells.map((label) => ({ role: columnRole(label), label }));
}

/**
 * Plans a table from its headings.
 *
 * @throws TintladderError `unsupported-quantity`, `grid-invalid`, `wavelength-repeated`, `wavelengths-uneven`; `invalid-option` for a column of
 * names that the table does not have
 */
export function planTable(heading: Heading, options: ReaderOptions, notes: Notes): TablePlan {
  const { columns, line, placeOf, context } = heading;
  const used = new Set<number>();
  const spectra = planSpectra(heading, options, notes, used);
  const colours = planColours(heading, notes, used);
  const conditionColumns = columns.flatMap(({ role }, index) =>
    role.kind === 'condition' ? [{ index, about: role.about }] : [],
  );
  const kindColumns = columns.flatMap(({ role }, index) => (role.kind === 'kind' ? [index] : []));
  const { name, replicate } = planNames(heading, options, notes, used);
  const fieldColumns = labelled(columns, used);
  noteKept(fieldColumns, placeOf, notes);
  for (const { index, text } of unknownIn(columns, colours)) noteNotUnderstood('viewing', text, placeOf(index), notes);
  return {
    line,
    width: columns.length,
    ...(name === undefined ? {} : { name }),
    ...(name === undefined && context.name ? { commonName: context.name } : {}),
    ...(replicate === undefined ? {} : { replicate }),
    spectra,
    colours,
    conditionColumns,
    kindColumns,
    fieldColumns,
    samplesOnly: context.samplesOnly === true,
    stated: context.stated,
  };
}

function unknownIn(columns: readonly PlannedColumn[], colours: readonly ColourPlan[]) {
  return colours.flatMap(({ indices: [index] }) => {
    const { role } = columns[index];
    return role.kind === 'coordinate' && role.heading.unknown !== '' ? [{ index, text: role.heading.unknown }] : [];
  });
}

const MOST_LISTED = 8;

function noteKept(kept: TablePlan['fieldColumns'], placeOf: (index: number) => string, notes: Notes): void {
  if (kept.length === 0) return;
  const labels = kept.map(({ label }) => label);
  const more = labels.length - MOST_LISTED;
  const list = more > 0 ? `${labels.slice(0, MOST_LISTED).join(', ')} and ${more} more` : labels.join(', ');
  const message = `These columns hold no colour that is read; they are kept as text: ${list}.`;
  notes.add('columns-kept-as-text', message, placeOf(kept[0].index), { columns: labels.slice(0, MOST_LISTED) });
}

/** Labels of the columns kept as text: the file's own, made distinct; a column without one is called by its number. */
function labelled(
  columns: readonly PlannedColumn[],
  used: ReadonlySet<number>,
): { readonly index: number; readonly label: string }[] {
  const taken = new Set<string>();
  const times = new Map<string, number>();
  return columns.flatMap(({ label: cell }, index) => {
    if (used.has(index)) return [];
    const own = cell.trim() === '' ? `column ${index + 1}` : cell.trim();
    let label = own;
    let n = times.get(own) ?? 2;
    for (; taken.has(label); n++) label = `${own} (${n})`;
    times.set(own, n);
    taken.add(label);
    return [{ index, label }];
  });
}
