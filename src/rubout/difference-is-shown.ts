import type { ColourDifference } from '../colorimetry/index.js';
import { fisherProbability } from '../numeric/internal.js';
import type { DifferenceInterval } from './difference-interval.js';

/** Probability of a difference by chance below which it is shown: a cause is looked for only behind such a one. */
const BY_CHANCE = 0.01;
const MANY = 1e6;

/**
 * Whether a difference is beyond the scatter of the readings: its 95 % interval leaves out zero, and its square over the whole scatter is an
 * improbable F over as many directions as the scatter has.
 *
 * @param covariance - of the mean difference, nine values
 * @see Box (1954), Ann. Math. Stat. 25, 290
 */
export function differenceIsShown(
  { dEab }: ColourDifference,
  { dEab: { low }, degreesOfFreedom = MANY }: DifferenceInterval,
  covariance: readonly number[] = [],
): boolean {
  if (!(low > 0)) return false;
  const total = covariance[0] + covariance[4] + covariance[8];
  const squares = covariance.reduce((sum, value) => sum + value * value, 0);
  const directions = Math.min(Math.max((total * total) / squares, 1), 3);
  const F = (dEab * dEab) / total;
  return 1 - fisherProbability(F, directions, Math.min(directions * degreesOfFreedom, MANY)) < BY_CHANCE;
}
