import { decimalsFor, formatFixed, formatList } from '../../core/internal.js';
import { type Estimate, formatEstimate, formatLimit } from '../../decision/internal.js';
import type { PlottedRow } from '../charts/draw-interval-chart.js';
import type { ReferenceLine } from '../charts/reference-line.js';
import type { ChartGroup } from '../document/report-document.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { byPaint, type ReportContext } from '../subject/report-context.js';

/** One quantity with intervals, a panel for each paint on a common scale. */
export interface IntervalPanels {
  readonly id: string;
  readonly caption: string;
  readonly quantity: string;
  readonly axisLabel: string;
  readonly unit: string;
  readonly estimate: (row: ComparisonRow) => Estimate | undefined;
  readonly origin: ReferenceLine | undefined;
}

/** Interval charts of one quantity with the study's limits on it; undefined where no row has it. */
export function intervalPanels(context: ReportContext, what: IntervalPanels): ChartGroup | undefined {
  const { id, caption, axisLabel, unit } = what;
  const rows = context.rows.flatMap((row) => {
    const estimate = what.estimate(row);
    return estimate ? [{ row, estimate }] : [];
  });
  if (rows.length === 0) return undefined;
  const lines = [...(what.origin ? [what.origin] : []), ...limitLines(context, what.quantity)];
  const shown = [
    ...lines.map(({ value }) => value),
    ...rows.flatMap(({ estimate: { value, interval } }) => [value, interval?.low ?? value, interval?.high ?? value]),
  ];
  // colour differences are read from zero
  const low = what.origin ? Math.min(...shown) : 0;
  const domain = [low, Math.max(...shown)] as const;
  const panels = byPaint(context, rows, ({ row }) => row.cell.paint).map(({ paint, own }, i) => {
    const described = own.map(
      ({ row, estimate }) => `${row.package} ${formatEstimate(estimate, decimalsFor(unit, estimate.value))}`,
    );
    const limits = lines.length > 0 ? ` Lines: ${lines.map(({ label }) => label).join('; ')}.` : '';
    return {
      heading: paint,
      chart: {
        id: `${id}-${i + 1}`,
        title: `${axisLabel} in ${paint}`,
        description: `${formatList(described)}.${limits}`,
        plot: {
          kind: 'intervals',
          axisLabel,
          lines,
          domain,
          rows: own.map(
            ({ row, estimate }): PlottedRow => ({
              ...estimate,
              label: context.names.short(row.cell.package),
              printed: formatFixed(estimate.value, decimalsFor(unit, estimate.value)),
              style: context.style(row.cell.package),
            }),
          ),
        },
      } as const,
    };
  });
  return { kind: 'charts', layout: 'panels', caption, panels };
}

/** The limits that the study sets for a quantity, each once. */
function limitLines({ criteria }: ReportContext, quantity: string): ReferenceLine[] {
  return criteria
    .filter((group) => group.quantity === quantity)
    .flatMap(({ limit, unit }) =>
      (['lower', 'upper'] as const).flatMap((bound): ReferenceLine[] => {
        const value = limit[bound];
        return value === undefined ? [] : [{ value, label: formatLimit({ [bound]: value }, unit), kind: 'limit' }];
      }),
    );
}
