import { TintladderError } from '../../core/index.js';

/**
 * The criteria by which two reductions can be called equally strong. Each has its own answer; a strength figure without
 * its criterion has no meaning.
 *
 * - `absorption-maximum`: K/S at the wavelength from 400 to 700 nm where the reference's colorant absorbs most
 * - `kubelka-munk-sum`: the sum of K/S over the readings from 400 to 700 nm
 * - `weighted-sum`: the sum of K/S weighted with the illuminant times the sum of the three colour-matching functions
 * - `lowest-tristimulus`: the tristimulus value of the reference that is lowest relative to the white point
 * - `tristimulus-y`: tristimulus value Y
 * - `smallest-difference`: the smallest CIEDE2000 difference that any amount of the trial reaches
 *
 * @example STRENGTH_CRITERIA.length // 6
 * @see ISO 787-24:1985 for K/S from one reflectivity of similar pigments; ISO 18314-2:2023 for K/S at the maximum, the weighted sum, Y and the
 * smallest of X, Y, Z; ASTM D4838; the plain sum and the smallest difference are common practice, no source
 */
export const STRENGTH_CRITERIA = Object.freeze([
  'absorption-maximum',
  'kubelka-munk-sum',
  'weighted-sum',
  'lowest-tristimulus',
  'tristimulus-y',
  'smallest-difference',
] as const);

/** One of {@link STRENGTH_CRITERIA}. */
export type StrengthCriterion = (typeof STRENGTH_CRITERIA)[number];

/**
 * Refuses a criterion that doesn't exist.
 *
 * @throws TintladderError `invalid-option` naming those that exist
 */
export function assertCriterion(criterion: StrengthCriterion): void {
  if (STRENGTH_CRITERIA.includes(criterion)) return;
  const expected = `one of ${STRENGTH_CRITERIA.join(', ')}`;
  throw new TintladderError('invalid-option', { path: 'options.criterion', received: criterion, expected });
}
