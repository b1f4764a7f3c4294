import type { Cell, StudyResult } from '../../study/index.js';
import { valueWords } from '../estimate-words.js';
import { type Child, element, type Markup } from './element.js';
import { outcomeMark } from './outcome.js';
import { dataTable } from './table.js';

/** Package by paint: outcome, strength and rub-out of each pair, and the worst of them for the package. */
export function compatibilityMatrix({ packages, paints, cells }: StudyResult): Markup {
  const found = new Map(cells.map((cell) => [JSON.stringify([cell.package, cell.paint]), cell]));
  return dataTable({
    caption: 'Compatibility of every package with every paint: outcome, strength (S, %) and rub-out (R, ΔE*ab).',
    columns: [
      { heading: 'Package' },
      ...paints.map(({ name }) => ({ heading: name })),
      { heading: 'All paints and own figures' },
    ],
    groups: [
      {
        rows: packages.map(({ package: { id, name }, outcome }) => ({
          cells: [
            name,
            ...paints.map((paint) => pair(found.get(JSON.stringify([id, paint.id])))),
            outcomeMark(outcome),
          ],
        })),
      },
    ],
  });
}

function pair(cell: Cell | undefined): Child {
  if (!cell) return 'not read';
  const figures = [
    cell.strength && `S\u00a0${valueWords(cell.strength.percent, '%')}`,
    cell.rubOut && `R\u00a0${valueWords(cell.rubOut.difference.dEab, 'ΔE*ab')}`,
  ].filter((text) => text !== undefined);
  return [outcomeMark(cell.outcome), element('span', { class: 'aside' }, figures.join(' · '))];
}
