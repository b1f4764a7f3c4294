import { findMinimum, studentQuantile } from '../numeric/internal.js';
import { type BoundedFigure, boundedFigure } from './bounded-figure.js';
import { ladderMisfit, type MeasuredLadder } from './ladder-misfit.js';
import type { Surface } from './surface.js';

/** The best k1 and k2 of one way of reading, and how well they do. */
export interface ProfiledSurface {
  readonly surface: Surface;
  readonly squares: number;
  readonly residual: number;
  readonly degreesOfFreedom: number;
  readonly external: BoundedFigure;
  readonly internal: BoundedFigure;
}

/** k2 is looked for in these bounds. */
const INTERNAL = [0, 0.9] as const;
const COARSE = 12;
/** Ends of intervals and minima are found to this. */
const FINE = 1e-4;

/**
 * Least squares over k1 (between the bounds given; fixed where they are equal) and k2, with 95 % bounds from the profile of the sum of squares.
 *
 * Neighbouring wavelengths err alike, so the number of readings is reduced by their autocorrelation before the bounds are drawn.
 *
 * @see Bates & Watts (1988), Nonlinear Regression Analysis, 6.1, on profiles
 */
export function profileSurface(
  ladder: MeasuredLadder,
  bounds: readonly [number, number],
  rest: Pick<Surface, 'specular' | 'geometry'>,
): ProfiledSurface | undefined {
  const squaresAt = (external: number, internal: number) => sum(ladderMisfit(ladder, { ...rest, external, internal }));
  const ofExternal = (external: number) => least((internal) => squaresAt(external, internal), INTERNAL);
  const ofInternal = (internal: number) => least((external) => squaresAt(external, internal), bounds);
  const best = least((external) => ofExternal(external).value, bounds);
  if (best.value === Infinity) return undefined;
  const surface = { ...rest, external: best.at, internal: ofExternal(best.at).at };
  const rows = ladderMisfit(ladder, surface);
  if (!rows) return undefined;
  const perStep = rows[0].length;
  const [all, steps] = [rows.length * perStep, rows.length];
  const independent = (1 - autocorrelation(rows)) / (1 + autocorrelation(rows));
  const unknowns = 2 * perStep + (bounds[0] < bounds[1] ? 2 : 1);
  const degreesOfFreedom = Math.max(1, (all - unknowns) * independent);
  const limit = best.value * (1 + studentQuantile(0.975, degreesOfFreedom) ** 2 / degreesOfFreedom);
  const figure = (value: number, profile: (at: number) => number, [from, to]: readonly [number, number]) =>
    boundedFigure(
      value,
      crossing(profile, value, from, limit) ?? Number.NEGATIVE_INFINITY,
      crossing(profile, value, to, limit) ?? Number.POSITIVE_INFINITY,
    );
  return {
    surface,
    squares: best.value,
    residual: Math.sqrt(best.value / (steps * perStep)),
    degreesOfFreedom,
    external: bounds[0] < bounds[1] ? figure(surface.external, (at) => ofExternal(at).value, bounds) : {},
    internal: figure(surface.internal, (at) => ofInternal(at).value, INTERNAL),
  };
}

function sum(rows: readonly Float64Array[] | undefined): number {
  if (!rows) return Infinity;
  return rows.reduce((total, row) => total + row.reduce((part, value) => part + value * value, 0), 0);
}

/** The least value of a function between two bounds: a coarse scan, then golden section around its best point. */
function least(f: (x: number) => number, [from, to]: readonly [number, number]): { at: number; value: number } {
  if (from === to) return { at: from, value: f(from) };
  const step = (to - from) / COARSE;
  const values = Array.from({ length: COARSE + 1 }, (_, i) => f(from + i * step));
  const i = values.reduce((best, value, j) => (value < values[best] ? j : best), 0);
  if (values[i] === Infinity) return { at: from, value: Infinity };
  const at = findMinimum(f, from + Math.max(0, i - 1) * step, from + Math.min(COARSE, i + 1) * step, FINE);
  return f(at) <= values[i] ? { at, value: f(at) } : { at: from + i * step, value: values[i] };
}

/** Where the profile leaves the limit on the way from the best value to an end; an end that it doesn't leave is an open bound. */
function crossing(profile: (at: number) => number, best: number, end: number, limit: number): number | undefined {
  if (profile(end) <= limit) return undefined;
  let [inside, outside] = [best, end];
  while (Math.abs(outside - inside) > FINE) {
    const middle = (inside + outside) / 2;
    if (profile(middle) <= limit) inside = middle;
    else outside = middle;
  }
  return (inside + outside) / 2;
}

/** Correlation of neighbouring residuals along the wavelengths, over all steps; not below 0. */
function autocorrelation(rows: readonly Float64Array[]): number {
  let [cross, square] = [0, 0];
  for (const row of rows) {
    for (let i = 0; i < row.length; i++) {
      square += row[i] * row[i];
      if (i > 0) cross += row[i] * row[i - 1];
    }
  }
  return square > 0 ? Math.min(0.95, Math.max(0, cross / square)) : 0;
}
