import { incompleteBeta, inverseIncompleteBeta } from './incomplete-beta.js';

/**
 * Probability that a Student t variable stays below `t`.
 *
 * @param t - any number
 * @param degreesOfFreedom - > 0, need not be whole
 * @see Abramowitz & Stegun 26.7.1 and 26.5.27
 */
export function studentProbability(t: number, degreesOfFreedom: number): number {
  const tail = incompleteBeta(degreesOfFreedom / (degreesOfFreedom + t * t), degreesOfFreedom / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}

/**
 * The t below which a Student t variable stays with probability `p`.
 *
 * @param p - 0 < p < 1
 * @param degreesOfFreedom - > 0, need not be whole (Welch & Satterthwaite give fractions); Infinity gives the normal quantile
 * @see Abramowitz & Stegun 26.7.1 and 26.5.27
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (p < 0.5) return -studentQuantile(1 - p, degreesOfFreedom);
  // Above 1e7 degrees of freedom the t and the normal quantile agree to less than 1e-6, and the beta function loses digits.
  const n = Math.min(degreesOfFreedom, 1e7);
  const x = inverseIncompleteBeta(2 * (p - 0.5), 0.5, n / 2);
  return Math.sqrt((n * x) / (1 - x));
}

/**
 * The ratio of variances below which an F variable stays with probability `p`.
 *
 * @param p - 0 < p < 1
 * @see Abramowitz & Stegun 26.6.2
 */
export function fisherQuantile(p: number, numerator: number, denominator: number): number {
  const x = inverseIncompleteBeta(p, numerator / 2, denominator / 2);
  return (denominator * x) / (numerator * (1 - x));
}

/**
 * Probability that an F variable stays below `ratio`.
 *
 * @see Abramowitz & Stegun 26.6.2
 */
export function fisherProbability(ratio: number, numerator: number, denominator: number): number {
  if (!(ratio > 0)) return 0;
  const x = numerator * ratio;
  return incompleteBeta(x / (x + denominator), numerator / 2, denominator / 2);
}
