import { describeViewing } from '../../colorimetry/index.js';
import { formatList } from '../../core/internal.js';
import type { Cell, PackageResult } from '../../study/index.js';
import type { MatrixRow, Verdict } from '../document/matrix.js';
import { figureCell, textCell } from '../document/table-cell.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { missingWhereRead } from '../subject/missing.js';
import { inOrder } from '../subject/package-order.js';
import { reasonWords } from '../subject/reason.js';
import type { ReportContext } from '../subject/report-context.js';
import { CRITERION_WORDS, quantityWords } from '../words/words.js';
import type { SectionBuilder } from './section-builder.js';

/** Package by paint at a glance: outcome, strength, rub-out and what it shows, and why a package fails. */
export const overviewSection: SectionBuilder = (context) => {
  const { result } = context;
  const { strengthCriterion, viewing } = result.method;
  return {
    id: 'overview',
    heading: 'Packages and paints',
    blocks: [
      {
        kind: 'matrix',
        caption: `Rub-out in ΔE*ab; in brackets the 95 % interval. Strength by ${CRITERION_WORDS[strengthCriterion]}, colours under ${describeViewing(viewing)}.`,
        rowHeading: 'Package',
        columnHeading: 'Paint',
        overallHeading: 'Overall',
        columns: result.paints.map(({ name }) => name),
        lines: [
          { label: 'Strength', unit: '%' },
          { label: 'Residual', unit: 'ΔE00', detail: true },
          { label: 'Rub-out', unit: 'ΔE*ab' },
        ],
        rows: inOrder(result).map((item) => rowOf(item, context)),
      },
    ],
  };
};

function rowOf(item: PackageResult, { result, rows, names }: ReportContext): MatrixRow {
  const { id, name } = item.package;
  const own = rows.filter(({ cell }) => cell.package === id);
  const worst = own.filter(({ cell }) => item.outcome !== 'meets' && cell.outcome === item.outcome);
  const where = formatList(worst.map(({ cell }) => names.paint(cell.paint)));
  return {
    name,
    overall: {
      outcome: item.outcome,
      remarks: [
        ...(result.recommendation.package === id ? ['recommended'] : []),
        ...(item.isReference ? ['reference'] : []),
        ...(worst.length > 0 && result.paints.length > 1 ? [`in ${where}`] : []),
        ...item.judgements.filter(({ outcome }) => outcome !== 'meets').map(reasonWords),
        ...missingWhereRead(item, result.cells).map(({ quantity, paint }) =>
          paint === undefined || result.paints.length === 1
            ? `${quantityWords(quantity)} missing`
            : `${quantityWords(quantity)} missing in ${names.paint(paint)}`,
        ),
      ],
    },
    verdicts: result.paints.map((paint) => {
      const row = own.find(({ cell }) => cell.paint === paint.id);
      return row && verdictOf(row);
    }),
  };
}

function verdictOf(row: ComparisonRow): Verdict {
  return {
    outcome: row.outcome,
    figures: [
      row.isReference ? textCell('100', { aside: 'reference' }) : figureCell(row.strength, '%'),
      figureCell(row.residual === undefined ? undefined : { value: row.residual }, 'ΔE00'),
      figureCell(row.rubOut, 'ΔE*ab', { aside: row.causes === undefined ? row.shown : undefined }),
    ],
    remarks: [...reasons(row.cell), ...found(row)],
  };
}

/** What fails before what is undecided. */
function reasons({ judgements }: Cell): string[] {
  return (['fails', 'undecided'] as const).flatMap((outcome) =>
    judgements.filter((one) => one.outcome === outcome).map(reasonWords),
  );
}

function found({ cell, shown, causes }: ComparisonRow): string[] {
  return [
    ...(shown !== undefined && causes !== undefined ? [`Rub-out: ${shown}; ${causes}`] : []),
    ...(cell.shadeChange ? ['Shade differs from the reference'] : []),
  ];
}
