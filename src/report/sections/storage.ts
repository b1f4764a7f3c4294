import type { Row } from '../document/table.js';
import { figureCell, NONE, textCell } from '../document/table-cell.js';
import { type ComparisonRow, rubOutEstimate, rubOutWords } from '../subject/comparison-row.js';
import { byPaint } from '../subject/report-context.js';
import { FINDING_WORDS } from '../words/words.js';
import type { SectionBuilder } from './section-builder.js';

/** The stored colorants compared with the same ones fresh, paint by paint. */
export const storageSection: SectionBuilder = (context) => {
  const stored = context.rows.filter(({ cell }) => cell.storage);
  if (stored.length === 0) return undefined;
  return {
    id: 'storage',
    heading: 'Storage',
    blocks: [
      {
        kind: 'table',
        caption: 'After storage. Strength is compared with the same colorant fresh; in brackets the 95 % interval.',
        columns: [
          { heading: 'Package' },
          { heading: 'Strength after storage, %', numeric: true },
          { heading: 'Rub-out fresh ΔE*ab', numeric: true },
          { heading: 'Rub-out stored ΔE*ab', numeric: true },
          { heading: 'Rub-out after storage' },
        ],
        groupedBy: 'Paint',
        groups: byPaint(context, stored, ({ cell }) => cell.paint).map(({ paint, own }) => ({
          heading: paint,
          rows: own.map(rowOf),
        })),
      },
    ],
  };
};

function rowOf({ package: name, rubOut, cell: { storage } }: ComparisonRow): Row {
  const { strength, rubOut: after } = storage ?? {};
  return [
    textCell(name),
    figureCell(strength && { value: strength.percent, interval: strength.interval }, '%', {
      aside: strength && FINDING_WORDS[strength.finding],
    }),
    figureCell(rubOut, 'ΔE*ab'),
    figureCell(after && rubOutEstimate(after), 'ΔE*ab'),
    after ? textCell(rubOutWords(after)) : NONE,
  ];
}
