import type { Warning } from '../../core/index.js';
import type { Interval } from '../../decision/index.js';
import type { Claim } from '../readings/claim.js';
import type { Level } from '../readings/level.js';
import type { Repetition } from '../readings/repetition.js';
import type { Direction } from './best-set.js';
import type { ScatterBasis } from './difference-variance.js';
import type { Shortfall } from './shortfall.js';

/** What the joint interval of a difference proves. */
export const FINDINGS = ['higher', 'lower', 'undecided'] as const;

/** One of {@link FINDINGS}. */
export type Finding = (typeof FINDINGS)[number];

/** The mean of one side. */
export interface SideMean {
  readonly name: string;
  readonly mean: number;
  readonly repetition: Repetition;
}

/** The difference of two sides, `trial - reference`, in the unit of the readings. */
export interface SideComparison {
  readonly trial: string;
  readonly reference: string;
  readonly difference: number;
  /** What the interval speaks of. */
  readonly claim: Claim;
  /** Of the difference; this and the intervals are absent where a side was read once and no history tells its scatter. */
  readonly standardDeviation?: number;
  readonly degreesOfFreedom?: number;
  /** 95 % for this comparison by itself. */
  readonly interval?: Interval;
  /** Holds together with those of all comparisons of the study at its one rate; the finding rests on it. */
  readonly joint?: Interval;
  readonly finding: Finding;
  readonly basis: ScatterBasis;
  /** Levels whose scatter is the history's, since they were not repeated. */
  readonly fromHistory: readonly Level[];
  /** What is missing for the claim that was wanted; the finding is undecided then. */
  readonly shortfall?: Shortfall;
}

/** How much units scatter, pooled over the sides that were repeated at one level. */
export interface LevelScatter {
  readonly level: Level;
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly sides: readonly string[];
  /** Days or sessions taken out; 0 where none were named or they could not be separated. */
  readonly blocks: number;
  /** Sides that scatter so much more than the others that their own scatter is used where it widens an interval. */
  readonly wider: readonly string[];
}

/** The highest, or lowest, of the trials. */
export interface Leader {
  readonly trial: string;
  /** To the reference, as found: likely too far out, since it is the best of several. */
  readonly difference: number;
  /** What to expect of it: drawn towards the mean of the trials by the share of scatter in their spread. */
  readonly shrunk: number;
}

/** Which sides may be the best. */
export interface BestSides {
  readonly direction: Direction;
  /** Trials that are the best or not proven worse than the best; how each stands to the reference, its own comparison says. */
  readonly notProvenWorse: readonly string[];
  /** Absent where there is no trial but one. */
  readonly leader?: Leader;
}

/** The comparisons of one group of sides, such as the packages of a paint. */
export interface GroupComparisons {
  readonly name?: string;
  readonly reference: string;
  readonly sides: readonly SideMean[];
  readonly scatter: readonly LevelScatter[];
  /** Every trial less the reference. */
  readonly againstReference: readonly SideComparison[];
  /** Every pair of trials, the later less the earlier; with the reference the pairs are those above. Joint intervals over all pairs. */
  readonly pairs: readonly SideComparison[];
  readonly best: BestSides;
  readonly warnings: readonly Warning[];
}

/** What {@link compareSides} gives. */
export interface SideComparisons {
  readonly kind: 'side-comparisons';
  readonly version: 1;
  /** Chance that any joint interval of the study misses. */
  readonly rate: number;
  /** Chance that each single comparison with a reference may miss, so that all together have `rate`. */
  readonly singleRate: number;
  readonly groups: readonly GroupComparisons[];
}
