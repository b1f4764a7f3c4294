import { type Column, type Table, withoutEmptyColumns } from '../document/table.js';
import { cellText, type TableCell } from '../document/table-cell.js';
import { type Child, element, type Markup } from '../markup/element.js';
import { outcomeMark } from './outcome.js';

/**
 * A table that a narrow screen shows as a list of its rows, each cell behind the heading of its column. A column without
 * anything in it is left out. The roles are written out because that list would otherwise not be read as a table.
 */
export function htmlTable(table: Table): Markup {
  const { caption, columns, groups, compact } = withoutEmptyColumns(table) ?? table;
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
        columns.map(({ heading, numeric }) =>
          element('th', { scope: 'col', role: 'columnheader', class: numeric && 'numeric' }, heading),
        ),
      ),
    ),
    groups.map(({ heading, rows }) =>
      element(
        'tbody',
        { role: 'rowgroup' },
        heading !== undefined &&
          element(
            'tr',
            { role: 'row', class: 'group' },
            element('th', { scope: 'rowgroup', role: 'rowheader', colspan: columns.length }, heading),
          ),
        rows.map((cells) =>
          element(
            'tr',
            { role: 'row' },
            cells.map((cell, i) => tableCell(cell, columns[i], i)),
          ),
        ),
      ),
    ),
  );
}

function tableCell(cell: TableCell, { heading, numeric }: Column, index: number): Markup {
  if (index === 0) return element('th', { scope: 'row', role: 'rowheader' }, content(cell));
  const classes = [numeric && 'numeric', cell.kind === 'none' && 'missing'].filter(Boolean).join(' ');
  return element('td', { role: 'cell', class: classes || undefined, 'data-label': heading }, content(cell));
}

function content(cell: TableCell): Child {
  const aside = cell.kind === 'none' ? undefined : cell.aside;
  return [
    cell.kind === 'outcome' ? outcomeMark(cell.outcome) : cellText(cell),
    cell.kind === 'figure' && cell.outcome && element('span', { class: 'aside' }, outcomeMark(cell.outcome)),
    aside !== undefined && element('span', { class: 'aside' }, aside),
  ];
}
