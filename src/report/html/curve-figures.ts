import { type Figure, quantityName, type Series, type SeriesPoint, type StudyResult } from '../../study/index.js';
import { valueWords } from '../estimate-words.js';
import { drawLineChart, type LineDrawing, type Point, type StyledSeries } from '../figures/draw-line-chart.js';
import { figure } from '../figures/figure.js';
import { type SeriesStyle, styleOf } from '../figures/series-style.js';
import { formatCount, formatList } from '../format.js';
import { namesOf } from '../names.js';
import type { Markup } from './element.js';
import { panel, panels } from './section.js';

type Styles = ReadonlyMap<string, SeriesStyle>;

/** Strength over each quantity that was varied, with the fitted curves, a panel for each paint. */
export function seriesFigures(result: StudyResult, styles: Styles): Markup[] {
  return result.series.flatMap((series) => curvePanels(result, styles, series) ?? []);
}

function curvePanels(
  result: StudyResult,
  styles: Styles,
  { kind, axis, response, caption, curves }: Series,
): Markup | undefined {
  const xLabel = `${axis.label}, ${axis.unit}`;
  const names = namesOf(result);
  const all = curves.flatMap(({ points, curve }) => [...points, ...curve]);
  const domains: Pick<LineDrawing, 'xDomain' | 'yDomain'> = {
    xDomain: [Math.min(0, ...all.map(({ at }) => at)), Math.max(...all.map(({ at }) => at))],
    yDomain: [Math.min(...all.map(({ value }) => value)), Math.max(100, ...all.map(({ value }) => value))],
  };
  const drawings = result.paints.flatMap((paint, i) => {
    const own = curves.filter((one) => one.paint === paint.id);
    if (own.length === 0) return [];
    const described = own.map(
      ({ package: item, points, figures }) =>
        `${names.package(item)}: ${[formatCount(points.length, 'reading'), ...figures.map(summary)].join(', ')}`,
    );
    return panel(
      paint.name,
      figure(
        {
          id: `${kind}-${i + 1}`,
          title: `${response.label} over ${xLabel} in ${paint.name}`,
          description: `${formatList(described)}.`,
        },
        drawLineChart({
          xLabel,
          yLabel: `${response.label}, ${response.unit}`,
          ...domains,
          lines: [{ value: 100, label: 'reference', kind: 'reference' }],
          series: own.map(
            ({ package: item, points, curve, mark }): StyledSeries => ({
              label: names.short(item),
              style: styleOf(styles, item),
              curve: curve.map(pointOf),
              points: points.map(pointOf),
              stroke: mark && pointOf(mark),
            }),
          ),
        }),
      ),
    );
  });
  return panels(caption, drawings);
}

const pointOf = ({ at, value }: SeriesPoint): Point => [at, value];

const summary = ({ quantity, value, unit }: Figure) => `${quantityName(quantity)} ${valueWords(value, unit)} ${unit}`;
