import type { StudyResult } from '../../study/index.js';
import { type ComparisonRow, comparisonRows, type Estimate } from '../comparison-row.js';
import { criterionGroups } from '../criterion-group.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { drawIntervalChart, type StyledRow } from '../figures/draw-interval-chart.js';
import { figure } from '../figures/figure.js';
import type { ReferenceLine } from '../figures/reference-line.js';
import { type SeriesStyle, styleOf } from '../figures/series-style.js';
import { formatList } from '../format.js';
import { limitWords } from '../limit-words.js';
import { namesOf } from '../names.js';
import { CRITERION_WORDS } from '../words.js';
import type { Markup } from './element.js';
import { panel, panels } from './section.js';

/** One quantity with intervals, a panel for each paint on a common scale. */
interface IntervalPanels {
  readonly id: string;
  readonly caption: string;
  readonly quantity: string;
  readonly axisLabel: string;
  readonly unit: string;
  readonly estimate: (row: ComparisonRow) => Estimate | undefined;
  readonly origin: ReferenceLine | undefined;
}

type Styles = ReadonlyMap<string, SeriesStyle>;

/** Strength of every package with its interval, against the 100 % of the reference. */
export function strengthFigure(result: StudyResult, styles: Styles): Markup | undefined {
  return intervalPanels(result, styles, {
    id: 'strength',
    caption: `Relative tinting strength with 95 % intervals, by ${CRITERION_WORDS[result.method.strengthCriterion]}. The solid line is the reference, a dashed line a limit.`,
    quantity: 'strength',
    axisLabel: 'Strength, %',
    unit: '%',
    estimate: ({ strength }) => strength,
    origin: { value: 100, label: 'reference, 100 %', kind: 'reference' },
  });
}

/** Size of every rub-out difference with its interval, against the limit. */
export function rubOutSizeFigure(result: StudyResult, styles: Styles): Markup | undefined {
  return intervalPanels(result, styles, {
    id: 'rub-out-size',
    caption: 'Rub-out difference, rubbed against unrubbed area, with 95 % intervals. A dashed line is a limit.',
    quantity: 'rub-out',
    axisLabel: 'ΔE*ab',
    unit: 'ΔE*ab',
    estimate: ({ rubOut }) => rubOut,
    origin: undefined,
  });
}

function intervalPanels(result: StudyResult, styles: Styles, what: IntervalPanels): Markup | undefined {
  const names = namesOf(result);
  const rows = comparisonRows(result).flatMap((row) => {
    const estimate = what.estimate(row);
    return estimate ? [{ row, estimate }] : [];
  });
  if (rows.length === 0) return undefined;
  const lines = [...(what.origin ? [what.origin] : []), ...limitLines(result, what.quantity)];
  const shown = [
    ...lines.map(({ value }) => value),
    ...rows.flatMap(({ estimate: { value, interval } }) => [value, interval?.low ?? value, interval?.high ?? value]),
  ];
  // colour differences are read from zero
  const low = what.origin ? Math.min(...shown) : 0;
  const domain = [low, Math.max(...shown)] as const;
  const drawings = result.paints.flatMap((paint, i) => {
    const own = rows.filter(({ row }) => row.cell.paint === paint.id);
    if (own.length === 0) return [];
    const described = own.map(({ row, estimate }) => `${row.package} ${estimateWords(estimate, what.unit)}`);
    const limits = lines.map(({ label }) => label);
    return panel(
      paint.name,
      figure(
        {
          id: `${what.id}-${i + 1}`,
          title: `${what.axisLabel} in ${paint.name}`,
          description: `${formatList(described)}.${limits.length > 0 ? ` Lines: ${limits.join('; ')}.` : ''}`,
        },
        drawIntervalChart({
          axisLabel: what.axisLabel,
          rows: own.map(
            ({ row, estimate }): StyledRow => ({
              ...estimate,
              label: names.short(row.cell.package),
              printed: valueWords(estimate.value, what.unit),
              style: styleOf(styles, row.cell.package),
            }),
          ),
          lines,
          domain,
        }),
      ),
    );
  });
  return panels(what.caption, drawings);
}

/** The limits that the study sets for a quantity, each once. */
function limitLines(result: StudyResult, quantity: string): ReferenceLine[] {
  return criterionGroups(result)
    .filter((group) => group.quantity === quantity)
    .flatMap(({ limit, unit }) =>
      [{ lower: limit.lower }, { upper: limit.upper }].flatMap((side): ReferenceLine[] => {
        const value = side.lower ?? side.upper;
        return value === undefined ? [] : [{ value, label: limitWords(side, unit), kind: 'limit' }];
      }),
    );
}
