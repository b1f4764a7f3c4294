import type { Interval } from '../decision/index.js';
import type { Claim, Level } from '../evidence/index.js';

/** One figure with everything needed to quote it. */
export interface Figure {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  /** 95 % by itself. */
  readonly interval?: Interval;
  /** Holds together with those of all packages that were compared; decisions rest on it. */
  readonly joint?: Interval;
  /** Of the figure itself, with its degrees of freedom, where known. */
  readonly uncertainty?: { readonly standardDeviation: number; readonly degreesOfFreedom?: number };
  /** A ratio in percent scatters evenly on its logarithm. */
  readonly ratio?: boolean;
  /** What the figure speaks of, for a strength. */
  readonly claim?: Claim;
  /** What has to be made anew before the figure can be judged. */
  readonly remedy?: string;
  /** Scatter of one unit (of level `of`; a reading if absent) of this quantity, where it is known. */
  readonly scatter?: { readonly standardDeviation: number; readonly of?: Level };
  /** True for a supplied figure without uncertainty and for the reference's own 100 %. */
  readonly exact?: boolean;
  /** How it came about: criterion, statistics, or `supplied`. */
  readonly method: string;
}
