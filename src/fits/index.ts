export { type ColorantAmount, colorantAmount } from './colorants/colorant-amount.js';
export {
  type ColorantCoefficients,
  type ColorantLadder,
  fitColorantCoefficients,
  type Reduction,
} from './colorants/colorant-coefficients.js';
export type { RelativeChange } from './colorants/relative-change.js';
export {
  type ResolvedChange,
  type ResolvedColorant,
  type ResolveOptions,
  resolveColorants,
  type TintColorant,
} from './colorants/resolve-colorants.js';
export { addedKOverS } from './colorants/spectral-k-over-s.js';
export {
  type TwoConstantOptions,
  type TwoConstantStrength,
  twoConstantStrength,
} from './colorants/two-constant-strength.js';
export { DOSAGE_OUTCOMES, type DosageOutcome, type LadderCurve } from './dosage/describe-plateau.js';
export {
  type DosageLadderFit,
  type DosageLadderOptions,
  type DosageReadings,
  type DosageStep,
  fitDosageLadder,
} from './dosage/fit-dosage-ladder.js';
export type { DosagePoint } from './dosage/quadratic-plateau.js';
export { LADDER_SCATTER_BASES, type LadderScatterBasis, type StepScatter } from './dosage/step-scatter.js';
export { fitGrindCurve, type GrindCurveOptions } from './grind/fit-grind-curve.js';
export {
  FORM_CHOICES,
  type FormChoice,
  type GrindCurveFit,
  type GrindFormFit,
} from './grind/grind-curve-fit.js';
export {
  GRIND_FORMS,
  GRIND_SCATTERS,
  type GrindCurvePoint,
  type GrindFormName,
  type GrindPoint,
  type GrindScatter,
} from './grind/grind-form.js';
export type { GrindStep } from './grind/grind-step.js';
export {
  type GrindingTimeSaved,
  grindingTimeSaved,
  TIME_FINDINGS,
  type TimeFinding,
  type TimeSavedOptions,
} from './grind/grinding-time-saved.js';
export type { TimeToStrength } from './grind/time-to-strength.js';
export type { FittedQuantity } from './ladder/fitted-quantity.js';
