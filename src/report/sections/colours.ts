import { colourDifference } from '../../colorimetry/index.js';
import type { Row } from '../document/table.js';
import { figureCell, NONE, type TableCell, textCell } from '../document/table-cell.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { byPaint } from '../subject/report-context.js';
import type { SectionBuilder } from './section-builder.js';

const COORDINATES = ['L*', 'a*', 'b*'];
const DIFFERENCES = ['ΔL*', 'Δa*', 'Δb*', 'ΔC*ab', 'ΔH*ab', 'ΔE00'];

/** Colours of both areas and the parts of the rub-out difference, paint by paint. */
export const coloursSection: SectionBuilder = (context) => {
  const { rows } = context;
  return {
    id: 'colours',
    heading: 'Colours',
    blocks: [
      {
        kind: 'table',
        caption: rows.some(({ cell }) => cell.colours.rubbed)
          ? 'Colours of the unrubbed areas, and the rub-out difference (rubbed minus unrubbed) in its parts.'
          : 'Colours of the tints.',
        compact: true,
        columns: [
          { heading: 'Package' },
          ...[...COORDINATES, ...DIFFERENCES].map((heading) => ({ heading, numeric: true })),
        ],
        groupedBy: 'Paint',
        groups: byPaint(context, rows, ({ cell }) => cell.paint).map(({ paint, own }) => ({
          heading: paint,
          rows: own.map(rowOf),
        })),
      },
    ],
  };
};

function rowOf({ package: name, cell: { colours } }: ComparisonRow): Row {
  const { unrubbed, rubbed } = colours;
  const plain = (value: number) => figureCell({ value }, '', { decimals: 2 });
  const signed = (value: number) => figureCell({ value }, '', { decimals: 2, signed: true });
  const parts = rubbed && colourDifference(unrubbed, rubbed);
  const differences: readonly TableCell[] = parts
    ? [...[parts.dL, parts.da, parts.db, parts.dC, parts.dH].map(signed), plain(parts.dE2000)]
    : DIFFERENCES.map(() => NONE);
  return [textCell(name), ...[unrubbed.L, unrubbed.a, unrubbed.b].map(plain), ...differences];
}
