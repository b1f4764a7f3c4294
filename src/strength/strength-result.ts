import type { ColourDifference, Grid, Lab, Spectrum, Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Claim } from '../evidence/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import type { Amounts } from './amounts.js';
import type { StrengthCriterion } from './criteria/strength-criterion.js';
import type { StrengthFinding } from './scatter/finding.js';
import type { StrengthRepetition } from './scatter/statement.js';
import type { StrengthInterval } from './scatter/strength-interval.js';

/** What every strength carries, from spectra or from Lab: the figure, how it was found and what it is worth. */
export interface StrengthFigure {
  readonly version: 1;
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
  /** What the figure and its interval can speak of; no higher than what was made anew on both sides. */
  readonly claim: Claim;
  readonly repetition: StrengthRepetition;
  /** The claim in words: `On this film: 104.2 % (95 % interval 103.5 to 104.9), 3 spots of one film on each side. ...` */
  readonly statement: string;
  readonly viewing: Viewing;
  readonly surface: SurfaceCorrection;
  readonly whiteSubtracted: boolean;
  readonly amounts?: Amounts;
  /** Every factor found, where the criterion has more than one. */
  readonly roots?: readonly number[];
  readonly warnings: readonly Warning[];
}

/** What a criterion names beside the strength: the absorption maximum its wavelength in nm, the tristimulus criteria their value. */
export type StrengthPlace<Criterion extends StrengthCriterion> = [Criterion] extends ['absorption-maximum']
  ? { readonly wavelength: number }
  : [Criterion] extends ['tristimulus-y']
    ? { readonly tristimulus: 'Y' }
    : [Criterion] extends ['lowest-tristimulus']
      ? { readonly tristimulus: 'X' | 'Y' | 'Z' }
      : unknown;

/** Relative tinting strength from spectra, by a criterion that may be known to the compiler. */
export type StrengthResult<Criterion extends StrengthCriterion = StrengthCriterion> = SpectralStrength & {
  readonly criterion: Criterion;
} & StrengthPlace<Criterion>;

interface SpectralStrength extends StrengthFigure {
  readonly kind: 'strength';
  readonly approximate: false;
  /** The trial matched at `factor`, as it would be measured. */
  readonly matched: Spectrum;
  /** Absorption maximum of the reference, nm, for the criterion that uses it. */
  readonly wavelength?: number;
  readonly grid: Grid;
}

/** Relative tinting strength from Lab values alone. */
export interface StrengthFromLabResult extends StrengthFigure {
  readonly kind: 'strength-from-lab';
  readonly approximate: true;
  /** The trial matched at `factor`. */
  readonly matched: Lab;
}
