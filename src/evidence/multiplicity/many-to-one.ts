import {
  findRoot,
  gaussLegendre,
  normalDensity,
  normalProbability,
  quadratureOver,
  studentQuantile,
} from '../../numeric/internal.js';
import { overScatter } from './over-scatter.js';

const OVER_COMMON = quadratureOver(gaussLegendre(32), -6, 6);
const DENSITIES = OVER_COMMON.nodes.map((z, i) => OVER_COMMON.weights[i] * normalDensity(z));

/** Critical values are wanted to so much. */
const PRECISION = 1e-5;

/** Loadings are rounded down to this step, which errs on the safe side and makes equals of those that nearly are. */
const STEP = Math.SQRT1_2 / 14;

/**
 * The loading of a comparison from variances.
 *
 * @param common - the part of `variance` that comes from the common side
 */
export function loadingOf(common: number, variance: number): number {
  return Math.floor(Math.sqrt(Math.min(common / variance, 0.98)) / STEP + 1e-9) * STEP;
}

/** Several comparisons with one and the same side. */
export interface ManyToOne {
  /** Of each comparison the share of its standard deviation that comes from the common side, 0 to 1; √½ where both sides are equal. */
  readonly loadings: readonly number[];
  /** Of the pooled scatter; Infinity where it is known. */
  readonly degreesOfFreedom: number;
  /** Whether each comparison may err to both sides or only upwards. */
  readonly sided: 'one' | 'two';
}

/**
 * Probability that none of several comparisons with one reference exceeds `critical` by chance.
 *
 * The reference is common to all, so that comparisons are correlated by the product of their loadings; so is the pooled scatter.
 *
 * @see Dunnett (1955), J. Am. Stat. Assoc. 50, 1096; in the product form of Hsu (1996), Multiple Comparisons, appendix
 */
export function manyToOneProbability(critical: number, { loadings, degreesOfFreedom, sided }: ManyToOne): number {
  // Comparisons of one design share their factor: a product of equals is a power.
  const groups = new Map<number, number>();
  for (const loading of loadings) groups.set(loading, (groups.get(loading) ?? 0) + 1);
  const factors = [...groups].map(([loading, count]) => ({ loading, count, own: Math.sqrt(1 - loading * loading) }));
  const given = (s: number): number => {
    const reach = critical * s;
    let sum = 0;
    for (let i = 0; i < DENSITIES.length; i++) {
      let product = DENSITIES[i];
      for (const { loading, count, own } of factors) {
        const middle = loading * OVER_COMMON.nodes[i];
        const above = normalProbability((reach - middle) / own);
        const inside = sided === 'one' ? above : above - normalProbability((-reach - middle) / own);
        product *= count === 1 ? inside : inside ** count;
      }
      sum += product;
    }
    return sum;
  };
  return overScatter(given, degreesOfFreedom);
}

/**
 * The critical value that several comparisons with one reference exceed together only in a share `rate` of cases.
 *
 * @param rate - chance that any of them errs, such as 0.05
 * @see Dunnett (1955), tables 1 and 2
 */
export function manyToOneCritical(rate: number, comparisons: ManyToOne): number {
  const { loadings, degreesOfFreedom, sided } = comparisons;
  const single = (missed: number) => studentQuantile(1 - (sided === 'two' ? missed / 2 : missed), degreesOfFreedom);
  // One comparison alone needs less, the sum of all chances (Bonferroni) more.
  const [low, high] = [single(rate), single(rate / loadings.length)];
  if (high - low < PRECISION) return high;
  const beyond = (critical: number) => manyToOneProbability(critical, comparisons) - (1 - rate);
  return findRoot(beyond, low, high, PRECISION);
}
