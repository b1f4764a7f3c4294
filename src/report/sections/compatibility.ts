import { decimalsFor, formatFixed } from '../../core/internal.js';
import type { Cell } from '../../study/index.js';
import { outcomeCell, type TableCell, textCell } from '../document/table-cell.js';
import type { SectionBuilder } from './section-builder.js';

/** Package by paint: outcome, strength and rub-out of each pair, and the worst of them for the package. */
export const compatibilitySection: SectionBuilder = ({ result: { packages, paints, cells } }) => {
  if (paints.length < 2) return undefined;
  const found = new Map(cells.map((cell) => [JSON.stringify([cell.package, cell.paint]), cell]));
  return {
    id: 'compatibility',
    heading: 'Compatibility',
    blocks: [
      {
        kind: 'table',
        caption: 'Compatibility of every package with every paint: outcome, strength (S, %) and rub-out (R, ΔE*ab).',
        columns: [
          { heading: 'Package' },
          ...paints.map(({ name }) => ({ heading: name })),
          { heading: 'All paints and own figures' },
        ],
        groups: [
          {
            rows: packages.map(({ package: { id, name }, outcome }) => [
              textCell(name),
              ...paints.map((paint) => pair(found.get(JSON.stringify([id, paint.id])))),
              outcomeCell(outcome),
            ]),
          },
        ],
      },
    ],
  };
};

function pair(cell: Cell | undefined): TableCell {
  if (!cell) return textCell('not read');
  const { strength, rubOut } = cell;
  const figures = [
    strength && `S\u00a0${formatFixed(strength.percent, decimalsFor('%', strength.percent))}`,
    rubOut && `R\u00a0${formatFixed(rubOut.difference.dEab, decimalsFor('ΔE*ab', rubOut.difference.dEab))}`,
  ].filter((text) => text !== undefined);
  return outcomeCell(cell.outcome, figures.length > 0 ? figures.join(' · ') : undefined);
}
