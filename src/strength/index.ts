export * from '../kubelka-munk/index.js';
export type { Amounts, ReductionAmounts } from './amounts.js';
export {
  type CompareCriteriaOptions,
  type CriteriaComparison,
  compareStrengthCriteria,
  type UnsolvedCriterion,
} from './compare-criteria.js';
export { relativeTintingStrength, type StrengthOptions } from './relative-tinting-strength.js';
export type { StrengthFinding } from './replicates/finding.js';
export { type ReplicatesNeededOptions, replicatesNeeded } from './replicates/replicates-needed.js';
export type { StrengthInterval } from './replicates/strength-interval.js';
export { STRENGTH_CRITERIA, type StrengthCriterion } from './strength-criterion.js';
export { relativeTintingStrengthFromLab, type StrengthFromLabOptions } from './strength-from-lab.js';
export type { ComparisonOptions } from './strength-options.js';
export type { StrengthFigure, StrengthFromLabResult, StrengthResult } from './strength-result.js';
