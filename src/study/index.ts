export { evaluateStudy } from './evaluate-study.js';
export type { Figure } from './figure.js';
export { parseStudy } from './parse-study.js';
export { COMPUTED_QUANTITIES, type ComputedQuantity, type QuantityNaming, quantityName } from './quantities.js';
export type {
  Cell,
  CellColours,
  CellSpectra,
  Judgement,
  LetDown,
  MissingFigure,
  PackageResult,
  Ranking,
  Recommendation,
  StorageResult,
  StrengthSummary,
  StudyResult,
} from './result.js';
export type { Series, SeriesCurve } from './series.js';
export type { SeriesPoint } from './series-kind.js';
export type { SeriesField, SeriesFit, SeriesId, SeriesPlace } from './series-kinds.js';
export {
  COMPARISON_FINDINGS,
  type ComparisonFinding,
  type PaintEvidence,
  type StrengthComparison,
  type StudyEvidence,
} from './strength-evidence.js';
export type {
  AcceptanceCriterion,
  ReadingPlace,
  ReadingRole,
  ReadingRule,
  Study,
  StudyExport,
  StudyPackage,
  StudyPaint,
  StudyPrecision,
  StudyWords,
  SuppliedFigure,
  UnitLabels,
} from './study.js';
