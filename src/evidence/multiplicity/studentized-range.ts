import {
  findRoot,
  gaussLegendre,
  normalDensity,
  normalProbability,
  quadratureOver,
  studentQuantile,
} from '../../numeric/internal.js';
import { overScatter } from './over-scatter.js';

const OVER_LOWEST = quadratureOver(gaussLegendre(48), -7, 7);
const DENSITIES = OVER_LOWEST.nodes.map((z, i) => OVER_LOWEST.weights[i] * normalDensity(z));

/** Critical values are wanted to so much. */
const PRECISION = 1e-5;

/**
 * Probability that the range of several means, in standard deviations of one mean, stays below `range`.
 *
 * @param range - 0 or more
 * @param means - how many, at least two
 * @param degreesOfFreedom - of the standard deviation; Infinity where it is known
 * @see Tukey (1953); integral as in Copenhaver & Holland (1988), J. Stat. Comput. Simul. 30, 1
 */
export function studentizedRangeProbability(range: number, means: number, degreesOfFreedom: number): number {
  const given = (s: number): number => {
    let sum = 0;
    for (let i = 0; i < DENSITIES.length; i++) {
      const highest = OVER_LOWEST.nodes[i];
      sum += DENSITIES[i] * (normalProbability(highest) - normalProbability(highest - range * s)) ** (means - 1);
    }
    return means * sum;
  };
  return overScatter(given, degreesOfFreedom);
}

/**
 * The range that several means exceed only in a share `rate` of cases; divided by √2 the critical value of all pairs.
 *
 * @param rate - such as 0.05
 */
export function studentizedRangeCritical(rate: number, means: number, degreesOfFreedom: number): number {
  const pair = (missed: number) => Math.SQRT2 * studentQuantile(1 - missed / 2, degreesOfFreedom);
  const [low, high] = [pair(rate), pair(rate / ((means * (means - 1)) / 2))];
  if (high - low < PRECISION) return high;
  const beyond = (range: number) => studentizedRangeProbability(range, means, degreesOfFreedom) - (1 - rate);
  return findRoot(beyond, low, high, PRECISION);
}
