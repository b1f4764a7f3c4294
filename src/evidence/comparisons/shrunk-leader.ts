import { mean, variance } from '../../numeric/internal.js';

/** A trial side with its difference to the reference and the variance of its own mean. */
export interface TrialFigure {
  readonly trial: string;
  readonly difference: number;
  /** Of the trial's own part; the reference's is common to all and moves none against another. */
  readonly ownVariance: number;
}

/**
 * The value to expect of the leader: of several figures the highest is likely too high, the more the less they differ beyond their scatter.
 *
 * Drawn towards the mean of the trials by the share of scatter in their spread (empirical Bayes, the variance between trials floored at 0).
 *
 * @param trials - at least one
 * @param leader - one of them
 * @see Efron & Morris (1975), J. Am. Stat. Assoc. 70, 311
 */
export function shrunkDifference(trials: readonly TrialFigure[], leader: TrialFigure): number {
  if (trials.length < 2) return leader.difference;
  const differences = trials.map(({ difference }) => difference);
  const middle = mean(differences);
  const between = Math.max(0, variance(differences) - mean(trials.map(({ ownVariance }) => ownVariance)));
  const total = between + leader.ownVariance;
  return total > 0 ? middle + (between / total) * (leader.difference - middle) : leader.difference;
}
