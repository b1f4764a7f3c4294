import { studentQuantile } from '../../numeric/internal.js';
import { loadingOf, manyToOneCritical } from '../multiplicity/many-to-one.js';
import type { DifferenceVariance } from './difference-variance.js';

/** Whether the highest or the lowest value is the best. */
export const DIRECTIONS = ['highest', 'lowest'] as const;

/** One of {@link DIRECTIONS}. */
export type Direction = (typeof DIRECTIONS)[number];

/** By how much the first of two sides is better than the second, and the variance of that as far as it is known. */
export interface Lead {
  readonly difference: number;
  readonly variance: DifferenceVariance | undefined;
}

/**
 * The sides that are not proven worse than the best: a set that holds the true best with a chance of at least 1 - `rate`.
 *
 * A side leaves the set only if some other is proven better than it, by Dunnett's one-sided critical value with the side itself as the
 * common one. Where a lead has no known variance nothing is proven.
 *
 * @param names - of the sides
 * @param leadOf - of the first over the second
 * @param rate - chance that the best is missing
 * @see Hsu (1984), Ann. Stat. 12, 1136; Hsu (1996), Multiple Comparisons, chapter 4
 */
export function notProvenWorse(
  names: readonly string[],
  leadOf: (first: string, second: string) => Lead,
  rate: number,
): string[] {
  return names.filter((name) => {
    const leads = names
      .filter((other) => other !== name)
      .map((other) => leadOf(other, name))
      .flatMap(({ difference, variance }) =>
        variance ? [{ lead: difference / Math.sqrt(variance.variance), variance }] : [],
      );
    const loadings = leads.map(({ variance }) => loadingOf(variance.ofSecond, variance.variance));
    return !leads.some(({ lead, variance: { degreesOfFreedom } }) => {
      // One comparison alone needs less, the sum of all chances (Bonferroni) more: most leads are decided by these.
      if (lead <= studentQuantile(1 - rate, degreesOfFreedom)) return false;
      if (lead > studentQuantile(1 - rate / leads.length, degreesOfFreedom)) return true;
      return lead > manyToOneCritical(rate, { loadings, degreesOfFreedom, sided: 'one' });
    });
  });
}
