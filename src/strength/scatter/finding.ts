import { CLAIMS, type Claim } from '../../evidence/index.js';
import type { StrengthInterval } from './strength-interval.js';

/** What the interval of a strength proves: a difference from 100 %, equality within a stated margin, or nothing yet. */
export const STRENGTH_FINDINGS = ['stronger', 'weaker', 'equal-within-margin', 'undecided'] as const;

/** One of {@link STRENGTH_FINDINGS}. */
export type StrengthFinding = (typeof STRENGTH_FINDINGS)[number];

/**
 * The finding of an interval. Equality comes first: whoever states a margin has said that less does not matter, even
 * where it is proven.
 *
 * @param interval - 95 % interval, %
 * @param margin - largest difference from 100 %, in %, that counts as equal
 */
export function findingOf(interval: StrengthInterval | undefined, margin: number | undefined): StrengthFinding {
  if (!interval) return 'undecided';
  const { low, high } = interval;
  if (margin !== undefined && low >= 100 - margin && high <= 100 + margin) return 'equal-within-margin';
  if (low > 100) return 'stronger';
  if (high < 100) return 'weaker';
  return 'undecided';
}

/** Whether the claim that a design carries is as high as the one that is wanted; a claim about a film has to be asked for. */
export function claimHolds(carried: Claim, wanted: Claim | undefined): boolean {
  if (wanted === undefined) return carried !== 'film';
  return CLAIMS.indexOf(carried) <= CLAIMS.indexOf(wanted);
}
