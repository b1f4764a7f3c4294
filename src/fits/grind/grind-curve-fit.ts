import type { Warning } from '../../core/index.js';
import type { FittedQuantity } from '../ladder/fitted-quantity.js';
import type { GrindCurvePoint, GrindFormName, GrindScatter } from './grind-form.js';
import type { GrindStep } from './grind-step.js';
import type { TimeToStrength } from './time-to-strength.js';

/** Why a form is the preferred one. */
export const FORM_CHOICES = ['aicc', 'fewer-parameters', 'only-form', 'caller'] as const;

/** One of {@link FORM_CHOICES}. */
export type FormChoice = (typeof FORM_CHOICES)[number];

/** One shape of the grind curve as fitted. Its intervals hold if the grind follows this law. */
export interface GrindFormFit {
  readonly form: GrindFormName;
  /** F∞, where the strength levels off, in the unit of the points; always an extrapolation */
  readonly finalStrength: FittedQuantity;
  /** Time to half the final strength, in the unit of the points; 0 if the curve starts above it */
  readonly halfTime: FittedQuantity;
  readonly timeTo90: FittedQuantity;
  readonly timeTo95: FittedQuantity;
  /** Standard deviation of the points around the curve, with n - p degrees of freedom; if it grows with the strength, that at the highest one */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  /** Akaike's criterion for small samples; absent if there are too few points for it */
  readonly aicc?: number;
  /** The fitted curve at 101 times from the first to the last one read, for plotting */
  readonly curve: readonly GrindCurvePoint[];
  readonly warnings: readonly Warning[];
}

/**
 * A grind curve. Final strength, half-time and the times to 90 and 95 % of the final strength hang on an end that was never read: they are
 * those of the preferred form and say `atLeast`, no interval. The figure to compare is `timeToStrength`.
 */
export interface GrindCurveFit extends GrindFormFit {
  readonly kind: 'grind-curve';
  readonly version: 1;
  /** Time to a stated strength inside the ladder, whatever the form; absent where the ladder doesn't reach it. */
  readonly timeToStrength?: TimeToStrength;
  /** Why `form` is the one: lower AICc, fewer parameters where there are too few points for AICc, the only one, or asked for. */
  readonly chosenBy: FormChoice;
  /** True if the points don't tell the forms apart. */
  readonly formsUndecided: boolean;
  /** Every form that could be fitted, the preferred one included. */
  readonly forms: readonly GrindFormFit[];
  readonly scatter: GrindScatter;
  /** Last time before the strength fell off; what lies beyond is in `points` but not in the curve. Absent where it rises or stays level. */
  readonly risesUntil?: number;
  /** The steps, so that a later comparison need not be handed them again. */
  readonly points: readonly GrindStep[];
  /** Of the standard errors of `points`: from units that were made anew, or from the points around the curve. */
  readonly pointDegreesOfFreedom: number;
}
