import { decimalsFor } from '../../core/internal.js';
import { formatLimit } from '../../decision/internal.js';
import type { RowGroup } from '../document/table.js';
import { figureCell, NONE, outcomeCell, textCell } from '../document/table-cell.js';
import type { CriterionGroup } from '../subject/criterion-group.js';
import type { Names } from '../subject/names.js';
import type { SectionBuilder } from './section-builder.js';

/** Every figure compared with its limit, criterion by criterion, with the readings that would decide an undecided one. */
export const criteriaSection: SectionBuilder = ({ criteria, names }) => {
  if (criteria.length === 0) return undefined;
  return {
    id: 'criteria',
    heading: 'Criteria',
    blocks: [
      {
        kind: 'table',
        caption: 'Acceptance criteria. A figure meets or fails a limit only if its whole 95 % interval does.',
        columns: [
          { heading: 'Package' },
          { heading: 'Paint' },
          { heading: 'Value (95 % interval)', numeric: true },
          { heading: 'Outcome' },
          { heading: 'Readings per side to decide', numeric: true },
        ],
        groups: criteria.map((group) => groupOf(group, names)),
      },
    ],
  };
};

function groupOf({ heading, limit, unit, reason, bound, entries }: CriterionGroup, names: Names): RowGroup {
  return {
    heading: `${heading}: ${formatLimit(limit, unit)}. ${reason}`,
    rows: entries.map(({ package: id, judgement }) => [
      textCell(names.package(id)),
      textCell(judgement.paint === undefined ? 'all' : names.paint(judgement.paint)),
      figureCell(judgement, unit, { decimals: decimalsFor(unit, bound) }),
      outcomeCell(judgement.outcome),
      judgement.readingsNeeded === undefined ? NONE : textCell(String(judgement.readingsNeeded)),
    ]),
  };
}
