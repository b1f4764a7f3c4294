import type { Interval, Outcome } from '../decision/index.js';
import type { RubOutCause } from './rub-out-cause.js';
import type { RubOutDirection } from './rub-out-result.js';

/** What was found for one colorant in one paint. */
export interface CompatibilityCell {
  readonly colorant: string;
  readonly paint: string;
  /** The worst of rub-out and strength. */
  readonly outcome: Outcome;
  readonly dEab: number;
  readonly interval?: Interval;
  /** Which way rubbing moved the colour, where a difference is shown. */
  readonly direction?: RubOutDirection;
  /** Causes that are still in question. */
  readonly causes: readonly RubOutCause[];
  /** %, where it was given. */
  readonly strength?: number;
  /** Where the strength has a limit. */
  readonly strengthOutcome?: Outcome;
}
