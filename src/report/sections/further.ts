import { STRENGTH_CRITERIA } from '../../strength/index.js';
import type { Block } from '../document/report-document.js';
import type { Table } from '../document/table.js';
import { figureCell, textCell } from '../document/table-cell.js';
import { byPaint, type ReportContext } from '../subject/report-context.js';
import { CRITERION_WORDS } from '../words/words.js';
import { letDownTable } from './let-down-table.js';
import type { SectionBuilder } from './section-builder.js';

/** Let-down of the mill bases, and strength by each criterion. */
export const furtherSection: SectionBuilder = (context) => {
  const parts: (Block | undefined)[] = [spreadTable(context), letDownTable(context)];
  const blocks = parts.filter((part) => part !== undefined);
  return blocks.length === 0 ? undefined : { id: 'further', heading: 'Further figures', blocks };
};

/** Where the criteria disagree, the trial differs in shade and no single figure should be quoted. */
function spreadTable(context: ReportContext): Table | undefined {
  const found = context.rows.filter(({ cell }) => cell.strengthByCriterion);
  if (found.length === 0) return undefined;
  return {
    kind: 'table',
    caption: 'Strength by each criterion, %. Where the criteria disagree, the trial differs in shade.',
    columns: [
      { heading: 'Package' },
      ...STRENGTH_CRITERIA.map((criterion) => ({ heading: CRITERION_WORDS[criterion], numeric: true })),
    ],
    groupedBy: 'Paint',
    groups: byPaint(context, found, ({ cell }) => cell.paint).map(({ paint, own }) => ({
      heading: paint,
      rows: own.map(({ package: name, cell: { strengthByCriterion = {} } }) => [
        textCell(name),
        ...STRENGTH_CRITERIA.map((criterion) => {
          const value = strengthByCriterion[criterion];
          return figureCell(value === undefined ? undefined : { value }, '%');
        }),
      ]),
    })),
  };
}
