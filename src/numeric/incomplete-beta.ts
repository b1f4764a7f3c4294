// Own code, since the statistics packages that offer a t quantile for fractional degrees of freedom weigh megabytes or
// take longer to load than the whole of this room may.

const TINY = 1e-300;

/** Lanczos coefficients for g = 7, n = 9 (Godfrey 2001), good to 1e-15. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function for x > 0. */
export function logGamma(x: number): number {
  const y = x - 1;
  let series = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i++) series += LANCZOS[i] / (y + i);
  const t = y + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(series);
}

/** Natural logarithm of the beta function B(a, b), a and b > 0. */
export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/**
 * Regularised incomplete beta function I_x(a, b), by its continued fraction.
 *
 * @param x - 0 to 1
 * @param a - > 0
 * @param b - > 0
 * @param ofBeta - log B(a, b), for callers that ask for many x
 * @see DLMF 8.17.22; Lentz's algorithm as in Press et al., Numerical Recipes, section 6.4
 */
export function incompleteBeta(x: number, a: number, b: number, ofBeta = logBeta(a, b)): number {
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - ofBeta);
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

function fraction(x: number, a: number, b: number): number {
  const bounded = (value: number) => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / bounded(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / bounded(1 + even * d);
    c = bounded(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / bounded(1 + odd * d);
    c = bounded(1 + odd / c);
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-16) break;
  }
  return h;
}

/**
 * The x at which I_x(a, b) = p, to the last digits of a double, by Newton's method inside a bracket that bisection narrows.
 *
 * @param p - from 0 to 1
 */
export function inverseIncompleteBeta(p: number, a: number, b: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  const ofBeta = logBeta(a, b);
  let low = 0;
  let high = 1;
  let x = 0.5;
  for (let step = 0; step < 200 && low < high; step++) {
    const difference = incompleteBeta(x, a, b, ofBeta) - p;
    if (difference < 0) low = x;
    else high = x;
    const density = Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - ofBeta);
    const change = difference / density;
    if (Math.abs(difference) <= Number.EPSILON || Math.abs(change) <= Number.EPSILON * Math.min(x, 1 - x)) return x;
    // Newton's step counts only where it stays inside; far from the root, where the density is tiny, it wouldn't.
    const next = x - change;
    x = next > low && next < high ? next : low + (high - low) / 2;
  }
  return x;
}
