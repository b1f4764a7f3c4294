import type { Warning } from '../core/index.js';
import type { FittedQuantity } from './fitted-quantity.js';
import type { GrindFormName, GrindPoint, GrindScatter } from './grind-form.js';

/** One shape of the grind curve as fitted. */
export interface GrindFormFit {
  readonly form: GrindFormName;
  /** F∞, where the strength levels off, in the unit of the points; the only figure that is always an extrapolation */
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
  readonly curve: readonly GrindPoint[];
  readonly warnings: readonly Warning[];
}

/** A grind curve: the figures of the preferred form, and both forms side by side. */
export interface GrindCurveFit extends GrindFormFit {
  /** Why `form` is the one: lower AICc, fewer parameters where there are too few points for AICc, the only one, or asked for. */
  readonly chosenBy: 'aicc' | 'fewer-parameters' | 'only-form' | 'caller';
  /** True if the points don't tell the forms apart, so that the intervals here span those of both. */
  readonly formsUndecided: boolean;
  /** Every form that could be fitted, the preferred one included. */
  readonly forms: readonly GrindFormFit[];
  readonly scatter: GrindScatter;
  /** The points as fitted, so that a later step need not be handed them again. */
  readonly points: readonly GrindPoint[];
}
