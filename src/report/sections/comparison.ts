import { decimalsFor, formatFixed } from '../../core/internal.js';
import { STRENGTH_CRITERIA } from '../../strength/index.js';
import { type Paragraph, paragraph } from '../document/report-document.js';
import type { Row, Table } from '../document/table.js';
import { figureCell, NONE, outcomeCell, textCell } from '../document/table-cell.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { byPaint, type ReportContext } from '../subject/report-context.js';
import { CRITERION_WORDS, FINDING_WORDS } from '../words/words.js';
import type { SectionBuilder } from './section-builder.js';

/** Strength, residual, rub-out, diagnosis and outcome of every package, paint by paint. */
export const comparisonSection: SectionBuilder = (context) => {
  const spread = recommendedSpread(context);
  return {
    id: 'comparison',
    heading: 'Comparison',
    blocks: [comparisonTable(context), ...(spread ? [spread] : [])],
  };
};

function comparisonTable(context: ReportContext): Table {
  return {
    kind: 'table',
    caption:
      'Packages compared. In brackets the 95 % interval; residual is the difference left when the trial is brought to the strength of the reference.',
    columns: [
      { heading: 'Package' },
      { heading: 'Strength, %', numeric: true },
      { heading: 'Residual ΔE00', numeric: true },
      { heading: 'Rub-out ΔE*ab', numeric: true },
      { heading: 'Outcome' },
      { heading: 'Diagnosis of the rub-out', detail: true },
    ],
    groupedBy: 'Paint',
    groups: byPaint(context, context.rows, ({ cell }) => cell.paint).map(({ paint, own }) => ({
      heading: paint,
      rows: own.map(rowOf),
    })),
  };
}

function rowOf(row: ComparisonRow): Row {
  const { strength, shadeChange } = row.cell;
  return [
    textCell(row.package),
    row.isReference
      ? textCell('100 (reference)')
      : figureCell(row.strength, '%', { aside: strength && FINDING_WORDS[strength.finding] }),
    figureCell(row.residual === undefined ? undefined : { value: row.residual }, 'ΔE00', {
      aside: shadeChange ? 'shade change' : undefined,
    }),
    figureCell(row.rubOut, 'ΔE*ab'),
    outcomeCell(row.outcome),
    row.diagnosis === undefined
      ? NONE
      : textCell(row.diagnosis, { aside: row.certainty, ordinary: row.certainty === undefined }),
  ];
}

/** Strength by every criterion for the recommended package, so that nobody takes one figure for the only one. */
function recommendedSpread({ result, rows }: ReportContext): Paragraph | undefined {
  const row = rows.find(({ cell }) => cell.package === result.recommendation.package && cell.strengthByCriterion);
  const found = row?.cell.strengthByCriterion;
  if (!row || !found) return undefined;
  const figures = STRENGTH_CRITERIA.flatMap((criterion) => {
    const value = found[criterion];
    return value === undefined ? [] : [`${CRITERION_WORDS[criterion]} ${formatFixed(value, decimalsFor('%', value))}`];
  });
  return paragraph(`${row.package} in ${row.paint} by every criterion, %: ${figures.join(', ')}.`);
}
