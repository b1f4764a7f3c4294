import { shortInterval } from '../../decision/internal.js';
import type { Matrix, MatrixLine, Verdict } from '../document/matrix.js';
import { cellText, type TableCell } from '../document/table-cell.js';
import { type Child, element, type Markup } from '../markup/element.js';
import { outcomeMark } from './outcome.js';

/** A matrix as a table whose cells are read at arm's length: outcome, figures, and why. */
export function htmlMatrix({ caption, rowHeading, overallHeading, columns, lines, rows }: Matrix): Markup {
  const headings = [rowHeading, overallHeading, ...columns];
  return element(
    'table',
    { role: 'table', class: columns.length > MOST_ROOMY ? 'matrix dense' : 'matrix' },
    element('caption', {}, caption),
    element(
      'thead',
      { role: 'rowgroup' },
      element(
        'tr',
        { role: 'row' },
        headings.map((heading) => element('th', { scope: 'col', role: 'columnheader' }, heading)),
      ),
    ),
    element(
      'tbody',
      { role: 'rowgroup' },
      rows.map(({ name, overall, verdicts }) =>
        element(
          'tr',
          { role: 'row' },
          element('th', { scope: 'row', role: 'rowheader' }, name),
          matrixCell(overallHeading, [outcomeMark(overall.outcome), ...overall.remarks.map(remark)]),
          verdicts.map((verdict, i) => matrixCell(columns[i], verdict ? verdictContent(verdict, lines) : 'not read')),
        ),
      ),
    ),
  );
}

/** More columns than these are set smaller. */
const MOST_ROOMY = 3;

function matrixCell(label: string, content: Child): Markup {
  return element('td', { role: 'cell', 'data-label': label }, element('div', {}, content));
}

function verdictContent({ outcome, figures, remarks }: Verdict, lines: readonly MatrixLine[]): Child {
  return [
    outcomeMark(outcome),
    lines.map((line, i) => !line.detail && figures[i].kind !== 'none' && figureLine(line, figures[i])),
    remarks.map(remark),
  ];
}

function figureLine({ label, unit }: MatrixLine, cell: TableCell): Markup {
  const aside = cell.kind === 'none' ? undefined : cell.aside;
  const interval = cell.kind === 'figure' && cell.interval && shortInterval(cell.interval, cell.decimals);
  return element(
    'span',
    { class: 'line' },
    element('span', { class: 'unbroken' }, element('span', { class: 'label' }, `${label} `), figureWords(cell, unit)),
    interval && [' ', element('span', { class: 'unbroken' }, `(${interval})`)],
    aside !== undefined && [' ', element('span', { class: 'label unbroken' }, aside)],
  );
}

/** The figure in bold, so that it can be found; colour differences need no unit beside their label. */
function figureWords(cell: TableCell, unit: string): Markup {
  if (cell.kind !== 'figure') return element('b', {}, cellText(cell));
  const { interval: _, ...alone } = cell;
  return element('b', {}, cellText({ ...alone, unit, unitShown: !unit.startsWith('ΔE') }));
}

function remark(text: string): Markup {
  return element('span', { class: 'remark' }, text);
}
