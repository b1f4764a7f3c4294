import { fisherProbability } from '../numeric/internal.js';
import { invertSymmetric } from './invert-symmetric.js';
import { dot, type NoiseTerm, type SpectralNoise } from './spectral-noise.js';

/** What some cause would change in a reflectance spectrum, by its sizes. */
export interface CauseModel {
  /** Where the search for the sizes begins; 0 is no effect. */
  readonly start: readonly number[];
  /** No size is below these. */
  readonly least: readonly number[];
  readonly curve: (sizes: readonly number[]) => Float64Array;
  /** What the curve may be wrong by at each wavelength by itself, as a share of its root mean square. */
  readonly roughness: number;
  /** What the model itself may be wrong by: curves that are each added some normal share of, one standard deviation each. */
  readonly tolerance: (sizes: readonly number[]) => readonly Float64Array[];
}

/** How well a cause explains a measured change. */
export interface Misfit {
  readonly sizes: readonly number[];
  readonly curve: Float64Array;
  /** Probability of a misfit at least as large where the cause is all there is. */
  readonly probability: number;
}

const STEPS = 4;
/** Sizes that do nearly the same move little, so that they don't run off in opposite directions (Levenberg & Marquardt). */
const DAMPING = 1e-3;
/** A size is moved by this for its derivative. */
const NUDGE = 1e-4;

/**
 * Fits a cause to a measured change of reflectance by generalised least squares and tells how probable its misfit is under the noise.
 *
 * What is left is divided between the terms of the noise and the single wavelengths as is most probable. The size of a term that is known with
 * few degrees of freedom makes a Student variable, which is brought to its normal equivalent; the wavelengths together make an F variable over as
 * many directions as their scatter has (Box). The squares add up to a chi-squared variable.
 *
 * @see Wallace (1959), Ann. Math. Stat. 30, 1121-1130, for the normal equivalent of t; Paulson (1942), Ann. Math. Stat. 13, 233-235, of F;
 * Wilson & Hilferty (1931), Proc. Natl. Acad. Sci. 17, 684-688, of chi-squared
 */
export function misfitOf(change: Float64Array, model: CauseModel, noise: SpectralNoise): Misfit {
  let sizes = [...model.start];
  let metric = metricOf(noise, model, sizes);
  for (let step = 0; step < STEPS; step++) {
    const curve = model.curve(sizes);
    const left = change.map((value, i) => value - curve[i]);
    const tangents = sizes.map((size, k) => {
      const moved = model.curve(sizes.map((value, j) => (j === k ? size + NUDGE : value)));
      return moved.map((value, i) => (value - curve[i]) / NUDGE);
    });
    sizes = stepped(sizes, left, tangents, model.least, metric);
    metric = metricOf(noise, model, sizes);
  }
  const curve = model.curve(sizes);
  const free = sizes.filter((size, k) => size > model.least[k]).length;
  return {
    sizes,
    curve,
    probability: probabilityOf(
      change.map((value, i) => value - curve[i]),
      free,
      noise,
      metric,
    ),
  };
}

interface Metric {
  readonly terms: readonly NoiseTerm[];
  /** Covariance of the terms once a spectrum is known. */
  readonly spread: readonly (readonly number[])[];
  readonly bands: number;
}

function metricOf(noise: SpectralNoise, model: CauseModel, sizes: readonly number[]): Metric {
  const { terms } = noise;
  const tolerance = model.tolerance(sizes);
  const curve = model.roughness > 0 ? model.curve(sizes) : undefined;
  const bands = noise.bands + (curve ? model.roughness ** 2 * (dot(curve, curve) / curve.length) : 0);
  const stated = tolerance.map((shape) => ({ shape, variance: 1, degreesOfFreedom: Number.POSITIVE_INFINITY }));
  const all = [...terms, ...stated];
  const gram = all.map((one, k) =>
    all.map((other, l) => dot(one.shape, other.shape) / bands + (k === l ? 1 / one.variance : 0)),
  );
  return { terms: all, spread: invertSymmetric(gram), bands };
}

/** The most probable share of each term in a spectrum. */
function effectsOf(spectrum: Float64Array, { terms, spread, bands }: Metric): number[] {
  const products = terms.map(({ shape }) => dot(shape, spectrum) / bands);
  return spread.map((row) => dot(row, products));
}

/** A spectrum without its terms: the inverse of the covariance times the spectrum, times the variance of the wavelengths. */
function withoutTerms(spectrum: Float64Array, metric: Metric): Float64Array {
  const effects = effectsOf(spectrum, metric);
  return spectrum.map((value, i) => metric.terms.reduce((left, { shape }, k) => left - effects[k] * shape[i], value));
}

/** One step of Gauss and Newton; a size that would fall below its least is held there and the others are fitted again. */
function stepped(
  sizes: readonly number[],
  left: Float64Array,
  tangents: readonly Float64Array[],
  least: readonly number[],
  metric: Metric,
): number[] {
  const images = tangents.map((tangent) => withoutTerms(tangent, metric));
  const solve = (free: readonly number[], held: Float64Array) => {
    const normal = free.map((k) => free.map((l) => dot(tangents[k], images[l])));
    const size = normal.reduce((most, row, i) => Math.max(most, row[i]), 0);
    if (!(size > 0)) return free.map(() => 0);
    const inverse = invertSymmetric(
      normal.map((row, i) => row.map((value, j) => (i === j ? value + DAMPING * (value + 1e-9 * size) : value))),
    );
    const products = free.map((k) => dot(images[k], held));
    return inverse.map((row) => dot(row, products));
  };
  let free = sizes.map((_, k) => k);
  let moves = solve(free, left);
  const next = [...sizes];
  const fallen = free.filter((k, i) => sizes[k] + moves[i] < least[k]);
  if (fallen.length > 0) {
    const held = Float64Array.from(left);
    for (const k of fallen) {
      next[k] = least[k];
      tangents[k].forEach((slope, i) => {
        held[i] -= slope * (least[k] - sizes[k]);
      });
    }
    free = free.filter((k) => !fallen.includes(k));
    moves = free.length > 0 ? solve(free, held) : [];
  }
  free.forEach((k, i) => {
    next[k] = Math.max(sizes[k] + moves[i], least[k]);
  });
  return next;
}

function probabilityOf(left: Float64Array, free: number, noise: SpectralNoise, metric: Metric): number {
  const effects = effectsOf(left, metric);
  const rest = withoutTerms(left, metric);
  let squares = 0;
  let dimensions = 0;
  metric.terms.forEach(({ variance, degreesOfFreedom: n }, k) => {
    const square = (effects[k] * effects[k]) / variance;
    squares += Number.isFinite(n) ? ((8 * n + 1) / (8 * n + 3)) ** 2 * n * Math.log1p(square / n) : square;
    dimensions += 1 - metric.spread[k][k] / variance;
  });
  const wavelengths = Math.max(left.length - dimensions, 1);
  const h = Math.min(noise.directions, wavelengths);
  squares += equivalent(dot(rest, rest) / (metric.bands * wavelengths), h, h * noise.degreesOfFreedom);
  const m = Math.max(dimensions + h - free, 1);
  return 1 - fisherProbability(squares / m, m, MANY);
}

/** Degrees of freedom at which F is chi-squared over its own for every purpose here. */
const MANY = 1e6;

/** The chi-squared variable with `h` degrees of freedom that is as improbable as an F variable. */
function equivalent(F: number, h: number, n: number): number {
  const root = Math.cbrt(F);
  const [a, b] = [2 / (9 * h), 2 / (9 * Math.min(n, MANY))];
  const z = ((1 - b) * root - (1 - a)) / Math.sqrt(b * root * root + a);
  return h * Math.max(1 - a + z * Math.sqrt(a), 0) ** 3;
}
