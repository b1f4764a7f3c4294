export { assessRubOut, type RubOutOptions } from './assess-rub-out.js';
export type { ColorantChange } from './colorant-changes.js';
export { compareStorage, type StorageComparison } from './compare-storage.js';
export {
  type CompatibilityCell,
  type CompatibilityMatrix,
  type CompatibilityOptions,
  type CompatibilityRow,
  type CompatibilityTest,
  compatibilityMatrix,
} from './compatibility-matrix.js';
export type { DifferenceInterval } from './difference-interval.js';
export type { RubOutReading } from './readings.js';
export {
  type Evidence,
  type PossibleCause,
  RUB_OUT_CAUSES,
  RUB_OUT_CERTAINTIES,
  RUB_OUT_DIAGNOSES,
  type RubOutCause,
  type RubOutCertainty,
  type RubOutDiagnosis,
  type RubOutResult,
  TINTS,
  type Tint,
} from './rub-out-result.js';
export type { RubOutStrengthChange } from './strength-change.js';
export { RUB_OUT_THRESHOLDS, type RubOutThresholds } from './thresholds.js';
