import type { Grid } from '../../colorimetry/index.js';
import type { Markup } from '../html/element.js';
import { drawLineChart, type Point, type StyledSeries } from './draw-line-chart.js';
import { type FigureText, figure } from './figure.js';
import { TINT_STYLES, type TintName } from './tint-style.js';

/** Values on a common grid, by the tint they belong to; values that don't exist are left out of the curve. */
export type TintCurves = readonly (readonly [TintName, readonly (number | undefined)[]])[];

/** Curves of one package in one paint over wavelength. */
export interface CellCurves extends FigureText {
  readonly yLabel: string;
  readonly yMax: number;
  readonly grid: Grid;
  readonly curves: TintCurves;
}

/** Reflectance or K/S over wavelength: reference, trial and rubbed area, each with its own dash. */
export function cellCurves({ grid, curves, yMax, yLabel, ...words }: CellCurves): Markup {
  const { start, step, count } = grid;
  const drawing = drawLineChart({
    yLabel,
    xLabel: 'Wavelength, nm',
    xDomain: [start, start + (count - 1) * step],
    yDomain: [0, yMax],
    height: 200,
    series: curves.map(([name, values]): StyledSeries => {
      const curve = values.flatMap((value, i): Point[] => (value === undefined ? [] : [[start + i * step, value]]));
      return { label: name, style: TINT_STYLES[name], curve };
    }),
  });
  return figure(words, drawing);
}
