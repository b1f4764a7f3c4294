import { type Child, element, fragment, type Markup } from './element.js';

/** A column; numbers stand on the right, so that their decimals can be compared. */
export interface Column {
  readonly heading: string;
  readonly numeric?: boolean;
}

/** A row: its first cell names it. */
export interface Row {
  readonly cells: readonly Child[];
  readonly className?: string;
}

/** Rows under a common heading; one group without a heading is a plain table. */
export interface RowGroup {
  readonly heading?: string;
  readonly rows: readonly Row[];
}

/** A table with its caption. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly groups: readonly RowGroup[];
  /** Short figures, which a narrow screen sets side by side. */
  readonly compact?: boolean;
}

/** What stands in a cell for which there is no figure. */
const MISSING = '–';

/**
 * A table that a narrow screen shows as a list of its rows, each cell behind the heading of its column. A column without
 * any figure is left out. The roles are written out because that list would otherwise not be read as a table.
 */
export function dataTable({ caption, columns, groups, compact }: Table): Markup {
  const rows = groups.flatMap((group) => group.rows);
  const shown = columns.map((_, i) => rows.some(({ cells }) => cells[i] !== MISSING));
  const some = <T>(cells: readonly T[]) => cells.filter((_, i) => shown[i]);
  return element(
    'table',
    { role: 'table', class: compact && 'compact' },
    element('caption', {}, caption),
    element(
      'thead',
      { role: 'rowgroup' },
      element(
        'tr',
        { role: 'row' },
        some(columns).map(({ heading, numeric }) =>
          element('th', { scope: 'col', role: 'columnheader', class: numeric && 'numeric' }, heading),
        ),
      ),
    ),
    groups.map(({ heading, rows }) =>
      rowGroup({ heading, rows: rows.map((row) => ({ ...row, cells: some(row.cells) })) }, some(columns)),
    ),
  );
}

function rowGroup({ heading, rows }: RowGroup, columns: readonly Column[]): Markup {
  return element(
    'tbody',
    { role: 'rowgroup' },
    heading !== undefined &&
      element(
        'tr',
        { role: 'row', class: 'group' },
        element('th', { scope: 'rowgroup', role: 'rowheader', colspan: columns.length }, heading),
      ),
    rows.map(({ cells, className }) =>
      element(
        'tr',
        { role: 'row', class: className },
        cells.map((cell, i) => {
          const { heading: label, numeric } = columns[i];
          const className = [numeric && 'numeric', cell === MISSING && 'missing'].filter(Boolean).join(' ');
          return i === 0
            ? element('th', { scope: 'row', role: 'rowheader' }, cell)
            : element('td', { role: 'cell', class: className || undefined, 'data-label': label }, fragment(cell));
        }),
      ),
    ),
  );
}
