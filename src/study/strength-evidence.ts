import type { Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import type { Claim, Level, LevelScatter, Repetition, ScatterBasis, Shortfall } from '../evidence/index.js';

/** What the joint interval of a strength proves against the other package. */
export const COMPARISON_FINDINGS = ['stronger', 'weaker', 'undecided'] as const;

/** One of {@link COMPARISON_FINDINGS}. */
export type ComparisonFinding = (typeof COMPARISON_FINDINGS)[number];

/** The strength of one package against another in one paint, %: 100 is equal. */
export interface StrengthComparison {
  /** Ids of the packages. */
  readonly trial: string;
  readonly reference: string;
  readonly percent: number;
  /** What the figure speaks of; no higher than what was made anew or is known from the laboratory's history. */
  readonly claim: Claim;
  /** 95 % for this comparison by itself. Absent where nothing tells the scatter. */
  readonly interval?: Interval;
  /** Holds together with those of all comparisons of the study, at its one rate; the finding rests on it. */
  readonly joint?: Interval;
  /** Of the figure, % of strength. */
  readonly standardDeviation?: number;
  readonly degreesOfFreedom?: number;
  readonly finding: ComparisonFinding;
  /** Where the scatter comes from. */
  readonly basis: ScatterBasis;
  /** Levels whose scatter is the history's, since they were not made anew. */
  readonly fromHistory: readonly Level[];
  /** What is missing for the claim that was wanted; the finding is undecided then. */
  readonly shortfall?: Shortfall;
  /** The claim in words, with its figure and what it rests on. */
  readonly statement: string;
}

/** Every strength of one paint, compared at the one error rate of the study. */
export interface PaintEvidence {
  readonly paint: string;
  /** What was repeated, for each package. */
  readonly repetitions: Readonly<Record<string, Repetition>>;
  /** Scatter of the units that were made anew, % of strength, pooled over packages. */
  readonly scatter: readonly LevelScatter[];
  readonly againstReference: readonly StrengthComparison[];
  /** Every pair of packages but the reference, the later against the earlier. */
  readonly pairs: readonly StrengthComparison[];
  /** Packages that are the best in this paint or not proven worse than the best. */
  readonly notProvenWorse: readonly string[];
  /** The highest (or lowest) of several is likely too far out: what to expect of it, %. */
  readonly leader?: { readonly package: string; readonly percent: number; readonly expected: number };
  readonly warnings: readonly Warning[];
}

/** What the readings of a study can carry, and at what rate. */
export interface StudyEvidence {
  /** Chance that any joint interval of the study misses. */
  readonly rate: number;
  /** Where the laboratory's history comes from, if the study states one. */
  readonly history?: string;
  readonly paints: readonly PaintEvidence[];
}
