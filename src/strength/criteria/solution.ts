import type { Warning } from '../../core/index.js';

/** What a criterion looked at; kept the same for all replicates of a comparison. */
export interface Choice {
  /** Band of the absorption maximum. */
  readonly band?: number;
  readonly tristimulus?: 'X' | 'Y' | 'Z';
  /** The factor that the means gave: with several solutions, the one nearest to it is meant. */
  readonly near?: number;
}

/** The factor at which a criterion calls the trial equal to the reference. */
export interface Solution {
  readonly factor: number;
  readonly choice: Choice;
  /** Every factor found, where there is more than one. */
  readonly roots?: readonly number[];
  readonly warnings: readonly Warning[];
}
