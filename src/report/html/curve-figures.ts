import type { StudyResult } from '../../study/index.js';
import { drawLineChart, type LineDrawing, type Point, type StyledSeries } from '../figures/draw-line-chart.js';
import { figure } from '../figures/figure.js';
import { type SeriesStyle, styleOf } from '../figures/series-style.js';
import { formatCount, formatFixed, formatList } from '../format.js';
import { namesOf } from '../names.js';
import type { Markup } from './element.js';
import { panel, panels } from './section.js';

/** Readings over a quantity with the curve fitted through them, for one package in one paint. */
interface CurveSeries {
  readonly package: string;
  readonly paint: string;
  readonly points: readonly Point[];
  readonly curve: readonly Point[];
  readonly stroke?: Point;
  readonly summary: string;
}

type Styles = ReadonlyMap<string, SeriesStyle>;

/** Strength over grinding time with the fitted curves, a panel for each paint. */
export function grindFigure(result: StudyResult, styles: Styles): Markup | undefined {
  const series = result.grindSeries.map((one): CurveSeries => {
    const curve = (one.fit?.curve ?? []).map(({ time, strength }): Point => [time, strength]);
    return {
      package: one.package,
      paint: one.paint,
      points: one.points.map(({ time, strength }) => [time, strength]),
      curve,
      summary: one.fit ? `95 % of the final strength at ${formatFixed(one.fit.timeTo95.value, 0)} min` : 'no fit',
    };
  });
  const caption =
    'Strength over grinding time: every reading, and the curve fitted to those of a package. 100 % is the reference as it is judged.';
  return curvePanels(result, styles, { id: 'grind', caption, xLabel: 'Grinding time, min', series });
}

/** Strength over dosage with the fitted curves; a stroke marks the start of the plateau. */
export function dosageFigure(result: StudyResult, styles: Styles): Markup | undefined {
  const series = result.dosageSeries.map((one): CurveSeries => {
    const curve = (one.fit?.curve ?? []).map(({ dosage, response }): Point => [dosage, response]);
    const optimum = one.fit?.optimum?.value;
    const plateau = one.fit?.plateau?.value;
    return {
      package: one.package,
      paint: one.paint,
      points: one.points.map(({ dosage, response }) => [dosage, response]),
      curve,
      stroke: optimum === undefined || plateau === undefined ? undefined : [optimum, plateau],
      summary:
        optimum === undefined ? 'no plateau found' : `plateau from ${formatFixed(optimum, 2)} ${result.dosageUnit}`,
    };
  });
  const caption =
    'Strength over dosage: every reading, and the curve fitted to those of a package. The stroke marks where the plateau begins. 100 % is the reference as it is judged.';
  return curvePanels(result, styles, { id: 'dosage', caption, xLabel: `Dosage, ${result.dosageUnit}`, series });
}

function curvePanels(
  result: StudyResult,
  styles: Styles,
  { id, caption, xLabel, series }: { id: string; caption: string; xLabel: string; series: readonly CurveSeries[] },
): Markup | undefined {
  if (series.length === 0) return undefined;
  const names = namesOf(result);
  const all = series.flatMap(({ points, curve }) => [...points, ...curve]);
  const domains: Pick<LineDrawing, 'xDomain' | 'yDomain'> = {
    xDomain: [Math.min(0, ...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))],
    yDomain: [Math.min(...all.map(([, y]) => y)), Math.max(100, ...all.map(([, y]) => y))],
  };
  const drawings = result.paints.flatMap((paint, i) => {
    const own = series.filter((one) => one.paint === paint.id);
    if (own.length === 0) return [];
    const described = own.map(
      ({ package: item, points, summary }) =>
        `${names.package(item)}: ${formatCount(points.length, 'reading')}, ${summary}`,
    );
    return panel(
      paint.name,
      figure(
        {
          id: `${id}-${i + 1}`,
          title: `Strength over ${xLabel} in ${paint.name}`,
          description: `${formatList(described)}.`,
        },
        drawLineChart({
          xLabel,
          yLabel: 'Strength, %',
          ...domains,
          lines: [{ value: 100, label: 'reference', kind: 'reference' }],
          series: own.map(
            ({ package: item, points, curve, stroke }): StyledSeries => ({
              label: names.short(item),
              style: styleOf(styles, item),
              curve,
              points,
              stroke,
            }),
          ),
        }),
      ),
    );
  });
  return panels(caption, drawings);
}
