import type { StudyResult } from '../../study/index.js';
import { type CriterionGroup, criterionGroups } from '../criterion-group.js';
import { intervalWords, valueWords } from '../estimate-words.js';
import { limitWords } from '../limit-words.js';
import { type Names, namesOf } from '../names.js';
import type { Markup } from './element.js';
import { outcomeMark } from './outcome.js';
import { dataTable, type RowGroup } from './table.js';

/** Every figure held against its limit, criterion by criterion, with the readings that would decide an undecided one. */
export function criteriaTable(result: StudyResult): Markup {
  const names = namesOf(result);
  return dataTable({
    caption: 'Acceptance criteria. A figure meets or fails a limit only if its whole 95 % interval does.',
    columns: [
      { heading: 'Package' },
      { heading: 'Paint' },
      { heading: 'Value', numeric: true },
      { heading: '95 % interval', numeric: true },
      { heading: 'Outcome' },
      { heading: 'Readings a side to decide', numeric: true },
    ],
    groups: criterionGroups(result).map((group) => groupOf(group, names)),
  });
}

function groupOf({ heading, limit, unit, reason, bound, entries }: CriterionGroup, names: Names): RowGroup {
  return {
    heading: `${heading}: ${limitWords(limit, unit)}. ${reason}`,
    rows: entries.map(({ package: id, judgement }) => ({
      cells: [
        names.package(id),
        judgement.paint === undefined ? 'all' : names.paint(judgement.paint),
        valueWords(judgement.value, unit, bound),
        intervalWords(judgement.interval, unit, bound),
        outcomeMark(judgement.outcome),
        judgement.readingsNeeded ?? '–',
      ],
    })),
  };
}
