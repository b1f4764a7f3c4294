import { colourDifference } from '../../colorimetry/index.js';
import type { StudyResult } from '../../study/index.js';
import { comparisonRows } from '../comparison-row.js';
import { formatFixed, formatSigned } from '../format.js';
import type { Markup } from './element.js';
import { dataTable } from './table.js';

/** Colours of both areas and the parts of the rub-out difference, paint by paint. */
export function colourTable(result: StudyResult): Markup {
  const rows = comparisonRows(result);
  const paints = [...new Set(rows.map(({ cell }) => cell.paint))];
  const differences = ['ΔL*', 'Δa*', 'Δb*', 'ΔC*ab', 'ΔH*ab', 'ΔE00'];
  return dataTable({
    caption: rows.some(({ cell }) => cell.colours.rubbed)
      ? 'Colours of the unrubbed areas, and the rub-out difference (rubbed minus unrubbed) in its parts.'
      : 'Colours of the tints.',
    compact: true,
    columns: [
      { heading: 'Package' },
      ...['L*', 'a*', 'b*', ...differences].map((heading) => ({ heading, numeric: true })),
    ],
    groups: paints.map((id) => {
      const own = rows.filter(({ cell }) => cell.paint === id);
      return {
        heading: own[0].paint,
        rows: own.map(({ package: name, cell: { colours } }) => {
          const { unrubbed, rubbed } = colours;
          const parts = rubbed && colourDifference(unrubbed, rubbed);
          return {
            cells: [
              name,
              formatFixed(unrubbed.L, 2),
              formatFixed(unrubbed.a, 2),
              formatFixed(unrubbed.b, 2),
              ...(parts
                ? [
                    ...[parts.dL, parts.da, parts.db, parts.dC, parts.dH].map((part) => formatSigned(part, 2)),
                    formatFixed(parts.dE2000, 2),
                  ]
                : differences.map(() => '–')),
            ],
          };
        }),
      };
    }),
  });
}
