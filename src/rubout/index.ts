export type { RubOutReading } from './area.js';
export { assessRubOut } from './assess-rub-out.js';
export {
  assessChartRubOut,
  type ChartRubOutArea,
  type ChartRubOutOptions,
  type ChartRubOutResult,
  type CoefficientRatio,
  FREED_FINDINGS,
  type FreedFinding,
} from './chart-rub-out.js';
export type { ColorantChange } from './colorant-changes.js';
export {
  AREA_PAIR_MEANINGS,
  AREA_TREATMENTS,
  type AreaComparison,
  type AreaPair,
  type AreaPairMeaning,
  type AreaTreatment,
  compareAreas,
} from './compare-areas.js';
export { compareStorage, STORAGE_FINDINGS, type StorageComparison, type StorageFinding } from './compare-storage.js';
export type { CompatibilityCell } from './compatibility-cell.js';
export {
  type CompatibilityMatrix,
  type CompatibilityOptions,
  type CompatibilityRow,
  type CompatibilityTest,
  compatibilityMatrix,
} from './compatibility-matrix.js';
export { DIFFERENCE_BASES, type DifferenceBasis, type DifferenceInterval } from './difference-interval.js';
export type { RubOutPrecision } from './precision.js';
export {
  CAUSE_SIZES,
  CAUSE_STANDINGS,
  type CauseSize,
  type CauseStanding,
  RUB_OUT_CAUSES,
  type RubOutCause,
  type WeighedCause,
} from './rub-out-cause.js';
export type { GlossReadings, OtherSpecular, OverBlack, RubOutOptions } from './rub-out-options.js';
export {
  DIRECTION_CERTAINTIES,
  type Evidence,
  type MeasuredChange,
  RUB_OUT_DIRECTIONS,
  RUB_OUT_FINDINGS,
  RUB_OUT_MEASURES,
  type RubOutDirection,
  type RubOutFinding,
  type RubOutMeasure,
  type RubOutResult,
  TINTS,
  type Tint,
} from './rub-out-result.js';
export { FAULTY_SIDES, type SideAtFault } from './side-at-fault.js';
export type { RubOutStrengthChange } from './strength-change.js';
export { RUB_OUT_THRESHOLDS, type RubOutThresholds } from './thresholds.js';
export type { Evenness } from './unevenness.js';
