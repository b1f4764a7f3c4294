export { evaluateStudy } from './evaluate-study.js';
export { parseStudy } from './parse-study.js';
export { COMPUTED_QUANTITIES, type ComputedQuantity, quantityName } from './quantities.js';
export type {
  Cell,
  CellColours,
  CellSpectra,
  DosageSeries,
  Figure,
  GrindSeries,
  Judgement,
  LetDown,
  PackageResult,
  Ranking,
  Recommendation,
  StorageResult,
  StrengthSummary,
  StudyResult,
} from './result.js';
export type {
  AcceptanceCriterion,
  ReadingPlace,
  ReadingRole,
  ReadingRule,
  Study,
  StudyPackage,
  StudyPaint,
  StudyWords,
  SuppliedFigure,
} from './study.js';
