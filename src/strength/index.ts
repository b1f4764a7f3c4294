export type { Amounts, ReductionAmounts } from './amounts.js';
export { kOverS, kOverSBatch, reflectanceFromKOverS } from './kubelka-munk.js';
export { relativeTintingStrength, type StrengthOptions } from './relative-tinting-strength.js';
export type { StrengthFinding } from './replicates/finding.js';
export type { StrengthInterval } from './replicates/strength-interval.js';
export { externalReflection, internalReflectance, measuredReflectance, type Surface } from './saunderson.js';
export { STRENGTH_CRITERIA, type StrengthCriterion } from './strength-criterion.js';
export type { ComparisonOptions } from './strength-options.js';
export type { StrengthFigure, StrengthFromLabResult, StrengthResult } from './strength-result.js';
