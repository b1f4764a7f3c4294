// The room of evidence, by what it answers: what was repeated (readings/), how much it scatters (variance/), what a laboratory knows of itself (control/),
// what differs at one error rate (comparisons/, multiplicity/), what lies far off (outliers/), what to make next (planning/), what all readings share
// (systematic/), and what a figure means for a limit (the room of decisions).
export * from '../decision/index.js';
export { DIRECTIONS, type Direction } from './comparisons/best-set.js';
export { type CompareSidesOptions, compareSides } from './comparisons/compare-sides.js';
export { SCATTER_BASES, type ScatterBasis } from './comparisons/difference-variance.js';
export type { SideGroup } from './comparisons/prepared-group.js';
export type { Shortfall } from './comparisons/shortfall.js';
export {
  type BestSides,
  FINDINGS,
  type Finding,
  type GroupComparisons,
  type Leader,
  type LevelScatter,
  type SideComparison,
  type SideComparisons,
  type SideMean,
} from './comparisons/side-comparisons.js';
export {
  type ChartedPoint,
  CONTROL_CHARTS,
  type ControlChart,
  type ControlChartOptions,
  type ControlChartResult,
  type ControlLimits,
  type ControlPoint,
  chartControls,
} from './control/chart-controls.js';
export {
  type Control,
  type ControlPrecision,
  type ControlsOptions,
  precisionFromControls,
} from './control/precision-from-controls.js';
export { lengthInterval } from './length-interval.js';
export {
  type ExchangedUnits,
  findOutliers,
  type Outlier,
  type OutlierOptions,
  type Outliers,
} from './outliers/find-outliers.js';
export type { Design } from './planning/design.js';
export {
  type LevelAlternative,
  type MeasurementGoal,
  type MeasurementPlan,
  type NextMeasurement,
  type NextMeasurementOptions,
  nextMeasurement,
} from './planning/next-measurement.js';
export { CLAIMS, type Claim, POPULATIONS, type Population } from './readings/claim.js';
export {
  type GroupedReadings,
  type GroupReadingsOptions,
  groupReadings,
  type ReadingGroup,
} from './readings/group-readings.js';
export { BLOCKS, type Block, LEVELS, type Level, levelNoun } from './readings/level.js';
export { mapRepeated } from './readings/map-repeated.js';
export type { NameParts } from './readings/name-pattern.js';
export type {
  BlockLabels,
  Repeated,
  RepeatedDrawdowns,
  RepeatedSpots,
  RepeatedWeighings,
} from './readings/repeated.js';
export { type Repetition, repetitionOf } from './readings/repetition.js';
export {
  DISTRIBUTIONS,
  type Distribution,
  type Propagation,
  type PropagationOptions,
  propagateParameters,
  type SessionParameters,
  type UncertainParameter,
} from './systematic/propagate-parameters.js';
export {
  type VarianceComponent,
  type VarianceComponents,
  varianceComponents,
} from './variance/nested-components.js';
export type { Precision } from './variance/precision.js';
