import { TintladderError } from '../core/index.js';
import { assertFiniteArray, assertNumberList, assertObject } from '../core/internal.js';
import type { Interval } from '../decision/index.js';
import { findRoot, incompleteBeta, logBeta, quadraticForm } from '../numeric/internal.js';

/** A mean difference of three coordinates, how surely it is known, and on how many degrees of freedom. */
export interface MeanDifference {
  readonly vector: readonly [number, number, number];
  /** Covariance matrix of `vector`, row by row: nine values. */
  readonly covariance: readonly number[];
  /** Of the covariance; Infinity where it is stated and not estimated. */
  readonly degreesOfFreedom: number;
}

/** Probability that an interval leaves out the truth. */
const MISSED = 0.05;
/** Shape of the share of {@link MISSED} that lies below: nothing where there is no difference, half of it far away. */
const TURN = 8;
/** A scatter seen on few spots looks flatter than it is; this many directions count as known beforehand, with this weight. */
const USUAL_DIRECTIONS = 2.5;
const USUAL_WEIGHT = 1;
/** Above this length, in units of the whole scatter, the direction of a difference is known better than not. */
const DIRECTED = 1.5;
/** A length below this share of the scatter is treated as being of that length: chance made it so small. */
const SMALLEST = 0.5;
/** Degrees of freedom beyond which Student's t is the normal distribution for every purpose here. */
const AS_GOOD_AS_INFINITE = 1e5;
/** Nodes of the integral: good to 1e-4 in probability. */
const NODES = 32;

/**
 * 95 % interval of the true length of a difference, such as ΔE*ab.
 *
 * Noise makes a length too large on average, most of all where there is no difference: three readings of one even film never
 * show zero. So the interval is not put around the length that was found but holds every true length r under which that
 * length is no surprise. Under r the component along the difference is `r + s t` with Student's t, the two components across
 * add their own squares (a scaled F), and all scale with one estimated scatter. Of the 5 % that may be missed, all lie above
 * while r is zero, since nothing is shorter than zero, and half on either side once r is far from zero.
 *
 * Far from zero the scatter along the difference counts. Near zero the direction that was found is chance, so there the scatter
 * of all directions counts, spread over as many directions as it seems to have (Box's degrees of freedom).
 *
 * @returns ends >= 0 that hold the length of the vector; `undefined` without scatter
 * @throws TintladderError `wrong-type`, `wrong-length`, `not-finite`; `out-of-range` for degrees of freedom that are not above 0
 * @see Box (1954), Ann. Math. Stat. 25, 290, for the sum of unequal squares; Feldman & Cousins (1998), Phys. Rev. D 57, for
 * one-sided turning into two-sided near a bound; the blend of both is the package's own and measured by simulation
 */
export function lengthInterval(difference: MeanDifference): Interval | undefined {
  assertDifference(difference);
  const { vector, covariance, degreesOfFreedom } = difference;
  const scatter = scatterOf(covariance, degreesOfFreedom);
  if (!(scatter.total > 0)) return undefined;
  const found = Math.hypot(...vector);
  const single = Math.sqrt(scatter.total / scatter.directions);
  const along = found > 0 ? quadraticForm(covariance, vector) / (found * found) : 0;
  const model: Model = { ...scatter, along, across: acrossOf(covariance, vector, found, scatter), degreesOfFreedom };
  const length = Math.max(found, SMALLEST * single);
  // A scatter below the last digit of the length can't be added to it, and a search for the upper end would never get on.
  if (length + single === length) return { low: found, high: found };
  const missedBelow = (r: number) => (MISSED / 2) * -Math.expm1(-((r / single) ** 2) / TURN);
  const missedAbove = (r: number) => MISSED - missedBelow(r);
  const tooLong = (r: number) => 1 - probabilityBelow(length, r, model) - missedAbove(r);
  const tooShort = (r: number) => probabilityBelow(length, r, model) - missedBelow(r);
  const tolerance = 1e-6 * single;

  // Of a true length as long as the one found at least half of all chances are too long, so the root lies in between.
  const low = tooLong(0) >= 0 ? 0 : findRoot(tooLong, 0, found, tolerance);
  if (tooShort(length) < 0) return { low, high: length };
  let beyond = length + single;
  while (tooShort(beyond) > 0) beyond += beyond - found + single;
  return { low, high: Math.max(length, findRoot(tooShort, length, beyond, tolerance)) };
}

function assertDifference(difference: MeanDifference): void {
  assertObject(difference, 'difference', 'a vector with its covariance and degrees of freedom');
  const { vector, covariance, degreesOfFreedom } = difference;
  for (const [path, list, length] of [['vector', vector, 3] as const, ['covariance', covariance, 9] as const]) {
    assertNumberList(list, path);
    if (list.length !== length) {
      throw new TintladderError('wrong-length', { path, received: list.length, expected: `${length} numbers` });
    }
    assertFiniteArray(list, path);
  }
  if (typeof degreesOfFreedom === 'number' && degreesOfFreedom > 0) return;
  throw new TintladderError('out-of-range', {
    path: 'degreesOfFreedom',
    received: degreesOfFreedom,
    expected: 'a number above 0',
  });
}

interface Scatter {
  /** Sum of the variances of the three coordinates. */
  readonly total: number;
  /** Over how many directions it is spread, 1 to 3. */
  readonly directions: number;
}

interface Model extends Scatter {
  /** Variance along the difference found. */
  readonly along: number;
  /** Over how many directions the scatter across it is spread, 1 to 2. */
  readonly across: number;
  readonly degreesOfFreedom: number;
}

function scatterOf(covariance: readonly number[], degreesOfFreedom: number): Scatter {
  const total = covariance[0] + covariance[4] + covariance[8];
  const squares = covariance.reduce((sum, value) => sum + value * value, 0);
  return { total, directions: usual(spread(total, squares, degreesOfFreedom, 3), degreesOfFreedom) };
}

/** Directions over which variances are spread, `(Σλ)² / Σλ²`, with both sums corrected for what few degrees of freedom do to them. */
function spread(total: number, squares: number, n: number, most: number): number {
  if (n <= 1) return (total * total) / squares;
  const ofTotal = (1 + 1 / n) * total * total - (2 / n) * squares;
  const ofSquares = squares - (total * total) / n;
  return ofSquares > 0 ? Math.min(Math.max(ofTotal / ofSquares, 1), most) : most;
}

function usual(directions: number, n: number): number {
  return n === Number.POSITIVE_INFINITY
    ? directions
    : (n * directions + USUAL_WEIGHT * USUAL_DIRECTIONS) / (n + USUAL_WEIGHT);
}

/** The spread of the scatter left when the part along the difference is taken out. */
function acrossOf(covariance: readonly number[], vector: readonly number[], found: number, { total }: Scatter): number {
  if (found === 0) return 2;
  const u = vector.map((value) => value / found);
  const image = [0, 1, 2].map((i) => u.reduce((sum, value, j) => sum + covariance[3 * i + j] * value, 0));
  const along = quadraticForm(covariance, u);
  // trace and sum of squares of P V P with P = 1 - u uᵀ
  const squares = covariance.reduce((sum, value) => sum + value * value, 0);
  const left = squares - 2 * image.reduce((sum, value) => sum + value * value, 0) + along * along;
  return Math.min(Math.max(left > 0 ? (total - along) ** 2 / left : 1, 1), 2);
}

/** Probability that a length up to `length` is found where the true one is `r`. */
function probabilityBelow(length: number, r: number, model: Model): number {
  const { total, directions, degreesOfFreedom } = model;
  const known = Math.min(length, r) ** 4;
  const directed = known / (known + (DIRECTED * total) ** 2);
  const along = directed * model.along + (1 - directed) * (total / directions);
  const across = Math.max(total - along, 0);
  const n = Math.min(degreesOfFreedom * (directed + (1 - directed) * directions), AS_GOOD_AS_INFINITE);
  const m = directed * model.across + (1 - directed) * Math.min(Math.max(directions - 1, 0.2), 2);

  // t = √n tan θ has the density cosⁿ⁻¹θ / B(n/2, 1/2); only |r + s t| < length counts, and t beyond `reach` is improbable.
  const reach = Math.sqrt(n * Math.expm1((2 * Math.log(1e6)) / n));
  const angle = (t: number) => Math.atan(Math.min(Math.max(t, -reach), reach) / Math.sqrt(n));
  const s = Math.sqrt(along);
  // Without scatter along the difference all of it lies across, which is then not zero.
  if (!(s > 0)) return fProbability((length * length - r * r) / across, m, n);
  const from = angle((-length - r) / s);
  const to = angle((length - r) / s);
  const ofBeta = logBeta(m / 2, (n + 1) / 2);
  let sum = 0;
  for (let i = 0; i < NODES; i++) {
    // Nodes crowd at the ends, where the integrand has its corners.
    const phi = (Math.PI * (i + 0.5)) / NODES;
    const theta = from + ((to - from) * (1 - Math.cos(phi))) / 2;
    const t = Math.sqrt(n) * Math.tan(theta);
    const left = length * length - (r + s * t) ** 2;
    // Given t, the common scatter is that of n + 1 degrees of freedom, n/(n + 1) (1 + t²/n) times as large.
    const ratio = left / ((across * (n + t * t)) / (n + 1));
    sum += Math.cos(theta) ** (n - 1) * fProbability(ratio, m, n + 1, ofBeta) * Math.sin(phi);
  }
  const beta = Math.exp(logBeta(n / 2, 0.5));
  return Math.min((sum * (to - from) * Math.PI) / (2 * NODES) / beta, 1);
}

/** Probability that an F variable, numerator m and denominator n, stays below x; x is infinite where nothing scatters. */
function fProbability(x: number, m: number, n: number, ofBeta = logBeta(m / 2, n / 2)): number {
  if (!(x > 0)) return 0;
  return x === Number.POSITIVE_INFINITY ? 1 : incompleteBeta((m * x) / (m * x + n), m / 2, n / 2, ofBeta);
}
