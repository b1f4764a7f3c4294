import type { Grid } from '../../colorimetry/index.js';
import { formatFixed, withUnit } from '../../core/internal.js';
import { internalReflectance, kOverS, type Surface } from '../../kubelka-munk/index.js';
import type { Cell } from '../../study/index.js';
import type { Chart } from '../charts/chart.js';
import type { PlottedSeries, Point } from '../charts/draw-line-chart.js';
import type { TintName } from '../charts/tint-style.js';

/** A curve on a common grid; values that don't exist are left out of it. */
export interface TintCurve {
  readonly label: string;
  readonly tint: TintName;
  readonly values: readonly (number | undefined)[];
}

/** Where a tint adds less K/S than this share of its most, a ratio of two of them shows noise alone. */
const LEAST_SHARE = 0.05;

/** The curves of a cell: reflectance of its areas, %, and the ratio of the K/S that the colorant adds, %. */
export function plateCurves({ spectra, strength }: Cell, surface: Surface | undefined) {
  const { reference, unrubbed, rubbed, white } = spectra;
  const curve = (tint: TintName, values: readonly number[]): TintCurve => ({
    label: tint,
    tint,
    values: values.map((value) => 100 * value),
  });
  const added = (values: readonly number[]) => addedKOverS(values, white, surface);
  return {
    reflectance: [
      // the reference package is its own reference and is drawn once
      ...(strength ? [curve('reference', reference)] : []),
      curve('unrubbed', unrubbed),
      ...(rubbed ? [curve('rubbed', rubbed)] : []),
    ],
    ratios: [
      ...(strength ? [ratioCurve('trial / reference', 'unrubbed', added(unrubbed), added(reference))] : []),
      ...(rubbed ? [ratioCurve('rubbed / unrubbed', 'rubbed', added(rubbed), added(unrubbed))] : []),
    ],
  };
}

type Values = readonly (number | undefined)[];

/** K/S above that of the white, where it was read, after the study's surface correction. */
function addedKOverS(
  values: readonly number[],
  white: readonly number[] | undefined,
  surface: Surface | undefined,
): Values {
  return values.map((value, i) => {
    const own = kOverSOf(value, surface);
    const base = white ? kOverSOf(white[i], surface) : 0;
    return own === undefined || base === undefined ? undefined : own - base;
  });
}

/** K/S of a measured reflectance; undefined where it has none. */
function kOverSOf(measured: number, surface: Surface | undefined): number | undefined {
  if (surface && !(measured > (surface.specular === 'included' ? surface.external : 0))) return undefined;
  const internal = surface ? internalReflectance(measured, surface) : measured;
  return internal > 0 && internal <= 1 ? kOverS(internal) : undefined;
}

function ratioCurve(label: string, tint: TintName, above: Values, below: Values): TintCurve {
  const most = Math.max(0, ...below.filter((value) => value !== undefined));
  const values = above.map((value, i) => {
    const base = below[i];
    return value === undefined || base === undefined || base < LEAST_SHARE * most ? undefined : (100 * value) / base;
  });
  return { label, tint, values };
}

/** Every value of every curve. */
export function valuesOf(curves: readonly TintCurve[]): number[] {
  return curves.flatMap(({ values }) => values.filter((value) => value !== undefined));
}

/** The range that the ratios of all plates share: around 100 %, and never so narrow that noise fills it. */
export function ratioDomain(ratios: readonly (readonly TintCurve[])[]): readonly [number, number] {
  const values = ratios.flatMap(valuesOf);
  return [Math.min(95, ...values), Math.max(105, ...values)];
}

/** Reflectance over wavelength; `highest` is shared by the plates. */
export function reflectancePlot(
  id: string,
  where: string,
  grid: Grid,
  curves: readonly TintCurve[],
  highest: number,
): Chart {
  const words = { id, title: `Reflectance of ${where}`, description: describeCurves(curves, grid) };
  return {
    ...words,
    plot: { ...plotOf(grid, curves), yLabel: 'Reflectance, %', yDomain: [0, highest] },
  };
}

/** The ratio of added K/S over wavelength; `domain` is shared by the plates. */
export function ratioPlot(
  id: string,
  where: string,
  grid: Grid,
  curves: readonly TintCurve[],
  domain: readonly [number, number],
): Chart {
  const words = { id, title: `Ratio of added K/S of ${where}`, description: describeCurves(curves, grid) };
  return {
    ...words,
    plot: {
      ...plotOf(grid, curves),
      yLabel: 'Ratio of added K/S, %',
      yDomain: domain,
      lines: [{ value: 100, label: 'equal', kind: 'reference' }],
    },
  };
}

function plotOf({ start, step, count }: Grid, curves: readonly TintCurve[]) {
  const series = curves.map(({ label, tint, values }): PlottedSeries => {
    const curve = values.flatMap((value, i): Point[] => (value === undefined ? [] : [[start + i * step, value]]));
    return { label, style: tint, curve };
  });
  const xDomain = [start, start + (count - 1) * step] as const;
  return { kind: 'lines', xLabel: 'Wavelength, nm', xDomain, height: 200, series } as const;
}

function describeCurves(curves: readonly TintCurve[], { start, step }: Grid): string {
  return curves
    .map(({ label, values }) => {
      const numbers = values.filter((value) => value !== undefined);
      if (numbers.length === 0) return `${label}: no value`;
      const place = (value: number) => `${formatFixed(start + values.indexOf(value) * step, 0)} nm`;
      const [low, high] = [Math.min(...numbers), Math.max(...numbers)].map(
        (value) => `${withUnit(formatFixed(value, 1), '%')} at ${place(value)}`,
      );
      return `${label}: lowest ${low}, highest ${high}`;
    })
    .join('; ');
}
