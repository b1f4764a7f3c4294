export * from '../kubelka-munk/index.js';
export type { Amounts, ReductionAmounts } from './amounts.js';
export {
  type CompareCriteriaOptions,
  type CriteriaComparison,
  compareStrengthCriteria,
  type UnsolvedCriterion,
} from './compare-criteria.js';
export { STRENGTH_CRITERIA, type StrengthCriterion } from './criteria/strength-criterion.js';
export { fitAmountExponent, type LadderStep } from './fit-amount-exponent.js';
export { type AmountExponent, EXPONENT_BASES, type ExponentBasis } from './linearity/amount-exponent.js';
export { type AmountTerm, amountTerm } from './linearity/amount-term.js';
export { OIL_PAINT_PAIRS, oilPaintExponent } from './linearity/oil-paint-exponents.js';
export { relativeTintingStrength, type StrengthOptions } from './relative-tinting-strength.js';
export { STRENGTH_FINDINGS, type StrengthFinding } from './scatter/finding.js';
export { type ReplicatesNeededOptions, replicatesNeeded } from './scatter/replicates-needed.js';
export type { StrengthRepetition } from './scatter/statement.js';
export type { StrengthInterval } from './scatter/strength-interval.js';
export { relativeTintingStrengthFromLab, type StrengthFromLabOptions } from './strength-from-lab.js';
export type { ComparisonOptions } from './strength-options.js';
export type { StrengthReading } from './strength-reading.js';
export type { StrengthFigure, StrengthFromLabResult, StrengthPlace, StrengthResult } from './strength-result.js';
