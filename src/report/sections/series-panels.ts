import { decimalsFor, formatCount, formatFixed, formatList, withUnit } from '../../core/internal.js';
import { type Figure, quantityName, type Series, type SeriesPoint } from '../../study/index.js';
import type { PlottedSeries, Point } from '../charts/draw-line-chart.js';
import type { ChartGroup } from '../document/report-document.js';
import { byPaint, type ReportContext } from '../subject/report-context.js';

/** A series with the curves fitted to it, a panel for each paint on common scales. */
export function seriesPanels(context: ReportContext, { kind, axis, response, caption, curves }: Series): ChartGroup {
  const { names, style } = context;
  const xLabel = `${axis.label}, ${axis.unit}`;
  const all = curves.flatMap(({ points, curve }) => [...points, ...curve]);
  const xDomain = [Math.min(0, ...all.map(({ at }) => at)), Math.max(...all.map(({ at }) => at))] as const;
  const yDomain = [
    Math.min(...all.map(({ value }) => value)),
    Math.max(100, ...all.map(({ value }) => value)),
  ] as const;
  const panels = byPaint(context, curves, ({ paint }) => paint).map(({ paint, own }, i) => {
    const described = own.map(
      ({ package: item, points, figures }) =>
        `${names.package(item)}: ${[formatCount(points.length, 'reading'), ...figures.map(summary)].join(', ')}`,
    );
    return {
      heading: paint,
      chart: {
        id: `${kind}-${i + 1}`,
        title: `${response.label} over ${xLabel} in ${paint}`,
        description: `${formatList(described)}.`,
        plot: {
          kind: 'lines',
          xLabel,
          yLabel: `${response.label}, ${response.unit}`,
          xDomain,
          yDomain,
          lines: [{ value: 100, label: 'reference', kind: 'reference' }],
          series: own.map(
            ({ package: item, points, curve, mark }): PlottedSeries => ({
              label: names.short(item),
              style: style(item),
              curve: curve.map(pointOf),
              points: points.map(pointOf),
              stroke: mark && pointOf(mark),
            }),
          ),
        },
      } as const,
    };
  });
  return { kind: 'charts', layout: 'panels', caption, panels };
}

const pointOf = ({ at, value }: SeriesPoint): Point => [at, value];

const summary = ({ quantity, value, unit }: Figure) =>
  `${quantityName(quantity)} ${withUnit(formatFixed(value, decimalsFor(unit, value)), unit)}`;
