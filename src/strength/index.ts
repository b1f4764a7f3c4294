export type { Amounts, ReductionAmounts } from './amounts.js';
export {
  type CompareCriteriaOptions,
  type CriteriaComparison,
  compareStrengthCriteria,
  type UnsolvedCriterion,
} from './compare-criteria.js';
export { contrastRatio } from './contrast-ratio.js';
export { type Film, type FilmSpectra, filmReflectance, filmSpectrum } from './film.js';
export {
  type FilmCoefficientSpectra,
  type FilmCoefficients,
  type FilmPair,
  type FilmPairSpectra,
  filmCoefficientSpectra,
  filmCoefficients,
} from './film-coefficients.js';
export {
  type FilmAndReflectivity,
  type FilmAndReflectivitySpectra,
  filmCoefficientSpectraFromReflectivity,
  filmCoefficientsFromReflectivity,
} from './film-from-reflectivity.js';
export { type HidingFilm, type HidingOptions, type HidingThickness, hidingThickness, spreadingRate } from './hiding.js';
export { kOverS, kOverSBatch, reflectanceFromKOverS } from './kubelka-munk.js';
export { meanSpectrum } from './mean-spectrum.js';
export { relativeTintingStrength, type StrengthOptions } from './relative-tinting-strength.js';
export type { StrengthFinding } from './replicates/finding.js';
export { type ReplicatesNeededOptions, replicatesNeeded } from './replicates/replicates-needed.js';
export type { StrengthInterval } from './replicates/strength-interval.js';
export { externalReflection, internalReflectance, measuredReflectance, type Surface } from './saunderson.js';
export { STRENGTH_CRITERIA, type StrengthCriterion } from './strength-criterion.js';
export { relativeTintingStrengthFromLab, type StrengthFromLabOptions } from './strength-from-lab.js';
export type { ComparisonOptions } from './strength-options.js';
export type { StrengthFigure, StrengthFromLabResult, StrengthResult } from './strength-result.js';
