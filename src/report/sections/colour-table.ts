import { colourDifference } from '../../colorimetry/index.js';
import type { Row, Table } from '../document/table.js';
import { figureCell, NONE, type TableCell, textCell } from '../document/table-cell.js';
import type { ComparisonRow } from '../subject/comparison-row.js';

const COORDINATES = ['L*', 'a*', 'b*'];
const DIFFERENCES = ['ΔL*', 'Δa*', 'Δb*', 'ΔC*ab', 'ΔH*ab', 'ΔE00'];

/** Colours of both areas of one package and the parts of the rub-out difference, a row for each paint. */
export function colourTable(rows: readonly ComparisonRow[]): Table {
  return {
    kind: 'table',
    caption: rows.some(({ cell }) => cell.colours.rubbed)
      ? 'Colours of the unrubbed areas, and the rub-out difference (rubbed minus unrubbed) in its parts.'
      : 'Colours of the tints.',
    compact: true,
    columns: [{ heading: 'Paint' }, ...[...COORDINATES, ...DIFFERENCES].map((heading) => ({ heading, numeric: true }))],
    groups: [{ rows: rows.map(rowOf) }],
  };
}

function rowOf({ paint, cell: { colours } }: ComparisonRow): Row {
  const { unrubbed, rubbed } = colours;
  const plain = (value: number) => figureCell({ value }, '', { decimals: 2 });
  const signed = (value: number) => figureCell({ value }, '', { decimals: 2, signed: true });
  const parts = rubbed && colourDifference(unrubbed, rubbed);
  const differences: readonly TableCell[] = parts
    ? [...[parts.dL, parts.da, parts.db, parts.dC, parts.dH].map(signed), plain(parts.dE2000)]
    : DIFFERENCES.map(() => NONE);
  return [textCell(paint), ...[unrubbed.L, unrubbed.a, unrubbed.b].map(plain), ...differences];
}
