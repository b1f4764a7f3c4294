import type { Row, Table } from '../document/table.js';
import { figureCell, textCell } from '../document/table-cell.js';
import type { ReportContext } from '../subject/report-context.js';

/** Let-down of the mill bases to the pigment share of the finished colorant; undefined where none is known. */
export function letDownTable({ result }: ReportContext): Table | undefined {
  const figure = (value: number | undefined, unit: string) =>
    figureCell(value === undefined ? undefined : { value }, unit);
  const rows = result.packages.flatMap(({ package: { name }, letDown }): Row[] => {
    if (!letDown) return [];
    const { letDownFactor, additiveShare, grindHoursPerTonne, hoursSavedPerTonne } = letDown;
    return [
      [
        textCell(name),
        figureCell({ value: letDownFactor }, '', { decimals: 3 }),
        figure(additiveShare, '%'),
        figure(grindHoursPerTonne, 'h'),
        figure(hoursSavedPerTonne, 'h'),
      ],
    ];
  });
  if (rows.length === 0) return undefined;
  return {
    kind: 'table',
    caption: 'Let-down: mass of finished colorant from one mass of mill base, and what follows from it.',
    columns: [
      { heading: 'Package' },
      { heading: 'Let-down factor', numeric: true },
      { heading: 'Additive in the colorant, %', numeric: true },
      { heading: 'Grinding, h per tonne', numeric: true },
      { heading: 'Saved compared with the reference, h per tonne', numeric: true },
    ],
    groups: [{ rows }],
  };
}
