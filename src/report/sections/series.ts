import { quoteEstimate } from '../../decision/internal.js';
import { quantityName } from '../../study/index.js';
import type { Table } from '../document/table.js';
import { textCell } from '../document/table-cell.js';
import type { ReportContext } from '../subject/report-context.js';
import type { SectionBuilder } from './section-builder.js';
import { seriesPanels } from './series-panels.js';

/** Strength over each quantity that was varied, with what the fitted curves say. */
export const seriesSection: SectionBuilder = (context) => {
  const { series } = context.result;
  if (series.length === 0) return undefined;
  const labels = series.map(({ axis }) => axis.label);
  return {
    id: 'series',
    heading: labels.length === 1 ? labels[0] : 'Series',
    blocks: [...series.map((one) => seriesPanels(context, one)), findingsTable(context)],
  };
};

/** What the fitted curves say, and why a series has none. */
function findingsTable({ result, names }: ReportContext): Table {
  return {
    kind: 'table',
    caption: 'What the fitted curves say, with 95 % intervals.',
    columns: [{ heading: 'Package' }, { heading: 'Paint' }, { heading: 'Finding' }],
    groups: result.series.map(({ axis, curves }) => ({
      heading: axis.label,
      rows: curves.map(({ package: item, paint, figures, reason }) => {
        const found = figures.map((one) => `${quantityName(one.quantity)} ${quoteEstimate(one, one.unit)}`);
        const finding = reason === undefined ? found.join('; ') || 'no finding' : `no curve: ${reason}`;
        return [textCell(names.package(item)), textCell(names.paint(paint)), textCell(finding)];
      }),
    })),
  };
}
