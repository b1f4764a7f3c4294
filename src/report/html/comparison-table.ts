import type { StudyResult } from '../../study/index.js';
import { type ComparisonRow, comparisonRows } from '../comparison-row.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { FINDING_WORDS } from '../words.js';
import { element, type Markup } from './element.js';
import { outcomeMark } from './outcome.js';
import { type Column, dataTable, type Row } from './table.js';

const COLUMNS: readonly Column[] = [
  { heading: 'Package' },
  { heading: 'Strength, %', numeric: true },
  { heading: 'Residual ΔE00', numeric: true },
  { heading: 'Rub-out ΔE*ab', numeric: true },
  { heading: 'Diagnosis' },
  { heading: 'Outcome' },
];

/** The comparison: strength, residual, rub-out, diagnosis and outcome of every package, paint by paint. */
export function comparisonTable(result: StudyResult): Markup {
  const rows = comparisonRows(result);
  const paints = [...new Set(rows.map(({ cell }) => cell.paint))];
  return dataTable({
    caption:
      'Packages compared. In brackets the 95 % interval; residual is the difference left when the trial is brought to the strength of the reference.',
    columns: COLUMNS,
    groups: paints.map((id) => {
      const own = rows.filter(({ cell }) => cell.paint === id);
      return { heading: own[0].paint, rows: own.map(rowOf) };
    }),
  });
}

function rowOf(row: ComparisonRow): Row {
  const finding = row.cell.strength && FINDING_WORDS[row.cell.strength.finding];
  return {
    className: row.isReference ? 'reference-row' : undefined,
    cells: [
      row.package,
      row.isReference
        ? '100 (reference)'
        : [estimateWords(row.strength, '%'), finding !== undefined && element('span', { class: 'aside' }, finding)],
      [
        valueWords(row.residual, 'ΔE00'),
        row.cell.shadeChange === true && element('span', { class: 'aside' }, 'shade change'),
      ],
      estimateWords(row.rubOut, 'ΔE*ab'),
      row.diagnosis === undefined
        ? '–'
        : [row.diagnosis, row.certainty !== undefined && element('span', { class: 'aside' }, row.certainty)],
      outcomeMark(row.outcome),
    ],
  };
}
