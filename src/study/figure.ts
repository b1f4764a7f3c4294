import type { Interval } from '../decision/index.js';

/** One figure with everything needed to quote it. */
export interface Figure {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  readonly interval?: Interval;
  /** Scatter of one reading of this quantity, where it is known. */
  readonly standardDeviation?: number;
  /** True for a supplied figure without uncertainty and for the reference's own 100 %. */
  readonly exact?: boolean;
  /** How it came about: criterion, statistics, or `supplied`. */
  readonly method: string;
}
