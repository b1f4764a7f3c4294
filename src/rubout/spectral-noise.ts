import { invertSymmetric } from './invert-symmetric.js';

/** One way in which readings err together at all wavelengths: `shape` times a normal variable. */
export interface NoiseTerm {
  readonly shape: Float64Array;
  readonly variance: number;
  /** With which the variance is known; Infinity where it is stated. */
  readonly degreesOfFreedom: number;
}

/** How a measured change of a reflectance spectrum errs: a few terms, and what each wavelength does by itself. */
export interface SpectralNoise {
  readonly terms: readonly NoiseTerm[];
  /** Variance of each wavelength by itself. */
  readonly bands: number;
  /** Over how many independent directions that part is spread: its wavelengths where it is white noise, few where it is smooth. */
  readonly directions: number;
  readonly degreesOfFreedom: number;
}

/** Degrees of freedom with which the terms are taken to be of one size beforehand, since few spots may show none of a term by chance. */
const PRIOR = 2;
const ROUNDS = 12;
/** Reflectance: no instrument resolves less. */
const RESOLUTION = 2e-5;

/**
 * Sizes of the terms of a noise from how repeated readings lie about their means: variance components by expectation and maximisation.
 *
 * @param residuals - readings minus the mean of their area
 * @param degreesOfFreedom - of all of them together
 * @param shapes - of the terms
 * @see Dempster, Laird & Rubin (1977), J. R. Stat. Soc. B 39, 1-38, for the algorithm; Box (1954), Ann. Math. Stat. 25, 290, for `directions`
 */
export function estimateNoise(
  residuals: readonly Float64Array[],
  degreesOfFreedom: number,
  shapes: readonly Float64Array[],
): SpectralNoise {
  const [nu, n] = [degreesOfFreedom, shapes[0].length];
  const gram = shapes.map((one) => shapes.map((other) => dot(one, other)));
  const projections = residuals.map((residual) => shapes.map((shape) => dot(shape, residual)));
  const squares = residuals.map((residual) => dot(residual, residual));
  const total = squares.reduce((sum, square) => sum + square, 0) / nu;
  const floor = RESOLUTION ** 2;
  let bands = Math.max(total / (2 * n), floor);
  let variances = shapes.map((_, k) => Math.max(total / (2 * shapes.length * gram[k][k]), floor / gram[k][k]));
  let effects = projections;
  for (let round = 0; round < ROUNDS; round++) {
    const spread = invertSymmetric(
      gram.map((row, k) => row.map((g, l) => g / bands + (k === l ? 1 / variances[k] : 0))),
    );
    effects = projections.map((b) => spread.map((row) => dot(row, b) / bands));
    const level = variances.reduce((sum, variance, k) => sum + variance * gram[k][k], 0) / variances.length;
    let left = 0;
    effects.forEach((u, i) => {
      const explained = gram.reduce((sum, row, k) => sum + u[k] * dot(row, u), 0);
      left += squares[i] - 2 * dot(u, projections[i]) + explained;
    });
    let shrunk = 0;
    spread.forEach((row, k) => {
      shrunk += dot(row, gram[k]);
    });
    variances = variances.map((_, k) => {
      const found = effects.reduce((sum, u) => sum + u[k] * u[k], 0) + nu * spread[k][k];
      return Math.max((found + (PRIOR * level) / gram[k][k]) / (nu + PRIOR), floor / gram[k][k]);
    });
    bands = Math.max((left + nu * shrunk) / (nu * n), floor);
  }
  const rest = residuals.map((residual, i) =>
    residual.map((value, j) => shapes.reduce((left, shape, k) => left - effects[i][k] * shape[j], value)),
  );
  return {
    terms: shapes.map((shape, k) => ({ shape, variance: variances[k], degreesOfFreedom: nu + PRIOR })),
    bands,
    directions: directionsOf(rest, nu, n - shapes.length),
    degreesOfFreedom: nu,
  };
}

/** The same noise with all its variances times a factor. */
export function scaleNoise({ terms, bands, ...rest }: SpectralNoise, factor: number): SpectralNoise {
  return {
    ...rest,
    terms: terms.map((term) => ({ ...term, variance: term.variance * factor })),
    bands: bands * factor,
  };
}

/** Of two estimates of one noise with the same shapes, the larger of each term with its own degrees of freedom. */
export function largerNoise(one: SpectralNoise, other: SpectralNoise): SpectralNoise {
  const { bands, directions, degreesOfFreedom } = other.bands > one.bands ? other : one;
  return {
    terms: one.terms.map((term, k) => (other.terms[k].variance > term.variance ? other.terms[k] : term)),
    bands,
    directions,
    degreesOfFreedom,
  };
}

/** `(Σλ)² / Σλ²` of the covariance behind some residuals, both sums corrected for what few degrees of freedom do to them. */
function directionsOf(residuals: readonly Float64Array[], nu: number, most: number): number {
  if (nu <= 1) return 1;
  // Products of readings and products of wavelengths have one sum of squares: taken of whichever are fewer.
  const columns = Array.from(residuals[0] ?? [], (_, band) => Float64Array.from(residuals, (row) => row[band]));
  const rows = columns.length < residuals.length ? columns : residuals;
  let total = 0;
  let squares = 0;
  for (let i = 0; i < rows.length; i++) {
    const square = dot(rows[i], rows[i]);
    total += square / nu;
    squares += (square / nu) ** 2;
    for (let j = i + 1; j < rows.length; j++) squares += 2 * (dot(rows[i], rows[j]) / nu) ** 2;
  }
  const ofTotal = (1 + 1 / nu) * total * total - (2 / nu) * squares;
  const ofSquares = squares - (total * total) / nu;
  return ofSquares > 0 ? Math.min(Math.max(ofTotal / ofSquares, 1), most) : most;
}

/** Scalar product. */
export function dot(one: ArrayLike<number>, other: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i] * other[i];
  return sum;
}
