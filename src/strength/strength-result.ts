import type { ColourDifference, Grid, Lab, Spectrum, Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import type { Amounts } from './amounts.js';
import type { StrengthCriterion } from './criteria/strength-criterion.js';
import type { StrengthFinding } from './scatter/finding.js';
import type { StrengthInterval } from './scatter/strength-interval.js';

/** What every strength carries, from spectra or from Lab: the figure, how it was found and what it is worth. */
export interface StrengthFigure {
  /** Relative tinting strength of the trial, %: 100 is the reference. */
  readonly percent: number;
  readonly criterion: StrengthCriterion;
  /** The trial's added absorption, taken this many times, equals the reference by the criterion. */
  readonly factor: number;
  /** Reference against trial as measured (means). */
  readonly difference: ColourDifference;
  /** Reference against the trial matched at `factor`: what is left is a shade difference. */
  readonly residual: ColourDifference;
  /** Tristimulus value that was made equal, for the criteria that use one. */
  readonly tristimulus?: 'X' | 'Y' | 'Z';
  /** Whether the figure comes from three broad bands instead of spectra. */
  readonly approximate: boolean;
  /** Absent where nothing tells the scatter of the readings. */
  readonly interval?: StrengthInterval;
  readonly finding: StrengthFinding;
  readonly viewing: Viewing;
  readonly surface?: Surface;
  readonly whiteSubtracted: boolean;
  readonly amounts?: Amounts;
  /** Number of readings per side; `white` where a white base was given. */
  readonly replicates: { readonly reference: number; readonly trial: number; readonly white?: number };
  /** Every factor found, where the criterion has more than one. */
  readonly roots?: readonly number[];
  readonly warnings: readonly Warning[];
}

/** Relative tinting strength from spectra. */
export interface StrengthResult extends StrengthFigure {
  /** The trial matched at `factor`, as it would be measured. */
  readonly matched: Spectrum;
  /** Absorption maximum of the reference, nm, for the criterion that uses it. */
  readonly wavelength?: number;
  readonly grid: Grid;
}

/** Relative tinting strength from Lab values alone. */
export interface StrengthFromLabResult extends StrengthFigure {
  readonly approximate: true;
  /** The trial matched at `factor`. */
  readonly matched: Lab;
}
