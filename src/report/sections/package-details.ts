import { formatLimit } from '../../decision/internal.js';
import type { Figure, Judgement, PackageResult } from '../../study/index.js';
import { type Block, paragraph, type Section } from '../document/report-document.js';
import type { Row, Table } from '../document/table.js';
import { figureCell, NONE, outcomeCell, textCell } from '../document/table-cell.js';
import { inOrder } from '../subject/package-order.js';
import type { ReportContext } from '../subject/report-context.js';
import { quantityWords } from '../words/words.js';
import { colourTable } from './colour-table.js';
import { rubOutFindings } from './rub-out-findings.js';
import type { SectionBuilder } from './section-builder.js';

/** Everything about one package in a section of its own, in the order of the overview. */
export const packageDetails: SectionBuilder = (context) =>
  inOrder(context.result).map((item, i) => packageSection(item, i, context));

function packageSection(item: PackageResult, index: number, context: ReportContext): Section {
  const { id, name, description } = item.package;
  const own = context.rows.filter(({ cell }) => cell.package === id);
  const blocks: (Block | undefined)[] = [
    paragraph(`(${id}${item.isReference ? ', reference' : ''})${description === undefined ? '' : `. ${description}`}`),
    figuresTable(item, context),
    own.length > 0 ? colourTable(own) : undefined,
    ...rubOutFindings(own),
  ];
  return { id: `package-${index + 1}`, heading: name, blocks: blocks.filter((block) => block !== undefined) };
}

/** Every figure of a package with its limit, paint by paint. */
function figuresTable(
  { package: { id }, figures, judgements }: PackageResult,
  context: ReportContext,
): Table | undefined {
  const own = context.rows.filter(({ cell }) => cell.package === id);
  const groups = [
    ...own.map(({ paint, cell }) => ({
      heading: paint,
      rows: cell.figures.flatMap((figure) => figureRows(figure, cell.judgements)),
    })),
    { heading: 'All paints', rows: figures.flatMap((figure) => figureRows(figure, judgements)) },
  ].filter(({ rows }) => rows.length > 0);
  if (groups.length === 0) return undefined;
  return {
    kind: 'table',
    caption:
      'Every figure, and the limit where one is set. A limit is met or failed only if the whole 95 % interval does.',
    columns: [
      { heading: 'Figure' },
      { heading: 'Value (95 % interval)', numeric: true },
      { heading: 'Limit', numeric: true },
      { heading: 'Outcome' },
      { heading: 'Readings per side to decide', numeric: true },
      { heading: 'Found by' },
    ],
    groupedBy: 'Paint',
    groups,
  };
}

/** A figure with each of its limits; the first row names it. */
function figureRows(figure: Figure, judgements: readonly Judgement[]): Row[] {
  const { quantity, unit, method } = figure;
  const value = figureCell(figure, unit, { unitShown: true });
  const own = judgements.filter((one) => one.quantity === quantity);
  if (own.length === 0) return [[textCell(quantityWords(quantity)), value, NONE, NONE, NONE, textCell(method)]];
  return own.map(({ limit, outcome, readingsNeeded, unit: limitUnit }) => [
    textCell(quantityWords(quantity)),
    value,
    textCell(formatLimit(limit, limitUnit)),
    outcomeCell(outcome),
    readingsNeeded === undefined ? NONE : textCell(String(readingsNeeded)),
    textCell(method),
  ]);
}
