export { type ColorantAmount, colorantAmount } from './colorant-amount.js';
export {
  type ColorantCoefficients,
  type ColorantLadder,
  fitColorantCoefficients,
  type Reduction,
} from './colorant-coefficients.js';
export { DOSAGE_OUTCOMES, type DosageLadderFit, type DosageOutcome, fitDosageLadder } from './fit-dosage-ladder.js';
export { fitGrindCurve, type GrindCurveOptions } from './fit-grind-curve.js';
export type { FittedQuantity } from './fitted-quantity.js';
export type { GrindCurveFit, GrindFormFit } from './grind-curve-fit.js';
export { GRIND_FORMS, GRIND_SCATTERS, type GrindFormName, type GrindPoint, type GrindScatter } from './grind-form.js';
export { type GrindingTimeSaved, grindingTimeSaved, type TimeSavedOptions } from './grinding-time-saved.js';
export type { DosagePoint } from './quadratic-plateau.js';
export {
  type RelativeChange,
  type ResolvedChange,
  type ResolvedColorant,
  type ResolveOptions,
  resolveColorants,
  type TintColorant,
} from './resolve-colorants.js';
export { addedKOverS } from './spectral-k-over-s.js';
export { type TwoConstantOptions, type TwoConstantStrength, twoConstantStrength } from './two-constant-strength.js';
