import { findMinimum, findRoot } from '../../numeric/internal.js';
import { type Dilution, factorRange } from '../reduction/dilution.js';

/** Ratio of neighbouring factors looked at: fine enough to tell two solutions apart, coarse enough to stay quick. */
const STEP = 1.25;

/**
 * Factors at which a criterion is looked at, evenly spaced in the logarithm: over the whole range in which no K/S is negative,
 * or only around `near`.
 */
export function scannedFactors(dilution: Dilution, near?: number): number[] {
  const range = factorRange(dilution);
  const low = near === undefined ? range.low : Math.max(range.low, near / STEP ** 2);
  const high = near === undefined ? range.high : Math.min(range.high, near * STEP ** 2);
  if (!(low < high)) return [];
  const steps = Math.max(1, Math.ceil(Math.log(high / low) / Math.log(STEP)));
  return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? high : low * (high / low) ** (i / steps)));
}

/** The solutions around `near` if there are any, otherwise those of the whole range. */
export function solutionsNear(near: number | undefined, find: (near?: number) => number[]): number[] {
  const local = near === undefined ? [] : find(near);
  return local.length > 0 ? local : find();
}

/** Roots of `f`, one between each pair of neighbouring factors where it changes sign. */
export function findRoots(factors: readonly number[], f: (factor: number) => number): number[] {
  const ofLog = (log: number) => f(Math.exp(log));
  const values = factors.map(f);
  const roots: number[] = [];
  for (let i = 1; i < factors.length; i++) {
    if (values[i - 1] > 0 === values[i] > 0) continue;
    roots.push(Math.exp(findRoot(ofLog, Math.log(factors[i - 1]), Math.log(factors[i]))));
  }
  return roots;
}

/** Minima of `f`, one around each factor that is lower than both its neighbours. */
export function findMinima(factors: readonly number[], f: (factor: number) => number): number[] {
  const ofLog = (log: number) => f(Math.exp(log));
  const values = factors.map(f);
  const minima: number[] = [];
  for (let i = 1; i < factors.length - 1; i++) {
    if (values[i] > values[i - 1] || values[i] >= values[i + 1]) continue;
    minima.push(Math.exp(findMinimum(ofLog, Math.log(factors[i - 1]), Math.log(factors[i + 1]))));
  }
  return minima;
}
