import { findRoot, studentQuantile } from '../../numeric/internal.js';
import { manyToOneProbability } from './many-to-one.js';
import { studentizedRangeProbability } from './studentized-range.js';

/** Comparisons that share their sides and so are correlated; different families are independent of each other. */
export type Family =
  | { readonly kind: 'many-to-one'; readonly loadings: readonly number[]; readonly degreesOfFreedom: number }
  | { readonly kind: 'pairs'; readonly means: number; readonly degreesOfFreedom: number };

/**
 * The chance to err that each single two-sided comparison may have, so that all of several families err together in a share `rate` of cases.
 *
 * Degrees of freedom may differ between comparisons: the chance is turned into a critical value with those of each. Within a family the
 * most degrees of freedom there are must be given, which errs on the safe side, since a scatter known less surely is more in common.
 *
 * @param rate - chance that any comparison of any family errs
 * @returns `rate` itself for one comparison
 */
export function singleRate(rate: number, families: readonly Family[]): number {
  const count = families.reduce(
    (sum, family) => sum + (family.kind === 'pairs' ? (family.means * (family.means - 1)) / 2 : family.loadings.length),
    0,
  );
  if (count <= 1) return rate;
  const right = (missed: number): number =>
    families.reduce((product, family) => product * probability(family, missed), 1) - (1 - rate);
  // On the scale of the logarithm chances of one comparison and of many are equally easy to find.
  const least = Math.log(rate / count);
  const most = Math.log(rate);
  return Math.exp(findRoot((log) => right(Math.exp(log)), least, most, 1e-3));
}

function probability(family: Family, missed: number): number {
  const { degreesOfFreedom } = family;
  const critical = studentQuantile(1 - missed / 2, degreesOfFreedom);
  return family.kind === 'pairs'
    ? studentizedRangeProbability(Math.SQRT2 * critical, family.means, degreesOfFreedom)
    : manyToOneProbability(critical, { ...family, sided: 'two' });
}
