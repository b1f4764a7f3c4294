import type { Grid } from '../../colorimetry/index.js';
import { formatFixed, withUnit } from '../../core/internal.js';
import { internalReflectance, kOverS, type Surface } from '../../kubelka-munk/index.js';
import type { Cell } from '../../study/index.js';
import type { Chart } from '../charts/chart.js';
import type { PlottedSeries, Point } from '../charts/draw-line-chart.js';
import type { TintName } from '../charts/tint-style.js';

/** Values on a common grid, by the tint they belong to; values that don't exist are left out of the curve. */
export type TintCurves = readonly (readonly [TintName, readonly (number | undefined)[]])[];

/** The curves of a cell; the reference package is its own reference and is drawn once. */
export function plateCurves({ spectra, strength }: Cell, surface: Surface | undefined) {
  const reflectance: TintCurves = [
    ...(strength ? [['reference', spectra.reference] as const] : []),
    ['unrubbed', spectra.unrubbed],
    ...(spectra.rubbed ? [['rubbed', spectra.rubbed] as const] : []),
  ];
  const ratio: TintCurves = reflectance.map(([name, values]) => [
    name,
    values.map((value) => ratioOf(value ?? 0, surface)),
  ]);
  return { reflectance, ratio };
}

/** K/S after the study's surface correction; undefined where a value has none, which is left out of the curve. */
function ratioOf(measured: number, surface: Surface | undefined): number | undefined {
  if (surface && !(measured > (surface.specular === 'included' ? surface.external : 0))) return undefined;
  const internal = surface ? internalReflectance(measured, surface) : measured;
  return internal > 0 && internal <= 1 ? kOverS(internal) : undefined;
}

/** Every value of every curve. */
export function valuesOf(curves: TintCurves): number[] {
  return curves.flatMap(([, values]) => values.filter((value) => value !== undefined));
}

/** Reflectance over wavelength; `highest` is shared by the plates. */
export function reflectancePlot(id: string, where: string, grid: Grid, curves: TintCurves, highest: number): Chart {
  const percent: TintCurves = curves.map(([name, values]) => [
    name,
    values.map((value) => (value === undefined ? undefined : 100 * value)),
  ]);
  const words = { id, title: `Reflectance of ${where}`, description: describeCurves(percent, grid, 1, '%') };
  return tintChart(words, grid, percent, 'Reflectance, %', 100 * highest);
}

/** K/S over wavelength; `highest` is shared by the plates. */
export function kOverSPlot(id: string, where: string, grid: Grid, curves: TintCurves, highest: number): Chart {
  const words = { id, title: `K/S of ${where}`, description: describeCurves(curves, grid, 3, '') };
  return tintChart(words, grid, curves, 'K/S', highest);
}

function tintChart(
  words: Omit<Chart, 'plot'>,
  { start, step, count }: Grid,
  curves: TintCurves,
  yLabel: string,
  yMax: number,
): Chart {
  const series = curves.map(([name, values]): PlottedSeries => {
    const curve = values.flatMap((value, i): Point[] => (value === undefined ? [] : [[start + i * step, value]]));
    return { label: name, style: name, curve };
  });
  const xDomain = [start, start + (count - 1) * step] as const;
  return {
    ...words,
    plot: { kind: 'lines', yLabel, xLabel: 'Wavelength, nm', xDomain, yDomain: [0, yMax], height: 200, series },
  };
}

function describeCurves(curves: TintCurves, { start, step }: Grid, decimals: number, unit: string): string {
  return curves
    .map(([name, values]) => {
      const numbers = values.filter((value) => value !== undefined);
      if (numbers.length === 0) return `${name}: no value`;
      const place = (value: number) => `${formatFixed(start + values.indexOf(value) * step, 0)} nm`;
      const [low, high] = [Math.min(...numbers), Math.max(...numbers)].map(
        (value) => `${withUnit(formatFixed(value, decimals), unit)} at ${place(value)}`,
      );
      return `${name}: lowest ${low}, highest ${high}`;
    })
    .join('; ');
}
