import { type ErrorCode, TintladderError, type Warning } from '../core/index.js';
import type { Repeated } from '../evidence/index.js';
import { STRENGTH_CRITERIA, type StrengthCriterion } from './criteria/strength-criterion.js';
import { relativeTintingStrength } from './relative-tinting-strength.js';
import { assertComparison, type ComparisonOptions } from './strength-options.js';
import type { StrengthReading } from './strength-reading.js';
import type { StrengthResult } from './strength-result.js';

/** Options of {@link compareStrengthCriteria}. */
export interface CompareCriteriaOptions extends ComparisonOptions<StrengthReading> {
  /**
   * Residual ΔE00 at equal strength above which trial and reference differ in shade. The default is common practice, no
   * source.
   *
   * @default 1
   */
  readonly shadeThreshold?: number | undefined;
}

/** A criterion that has no answer for these readings, and why. */
export interface UnsolvedCriterion {
  readonly criterion: StrengthCriterion;
  readonly code: ErrorCode;
  readonly reason: string;
}

/** Every criterion side by side. */
export interface CriteriaComparison {
  readonly kind: 'criteria-comparison';
  readonly version: 1;
  /** In the order of {@link STRENGTH_CRITERIA}; at least one. */
  readonly results: readonly StrengthResult[];
  readonly unsolved: readonly UnsolvedCriterion[];
  /** Largest less smallest strength, %. */
  readonly spread: number;
  /** The result with the largest residual ΔE00. */
  readonly largestResidual: { readonly criterion: StrengthCriterion; readonly dE2000: number };
  readonly shadeThreshold: number;
  /** Whether the largest residual exceeds the threshold: the trial differs in shade, not only in strength. */
  readonly shadeChange: boolean;
  /** Whether one figure may stand for all: no shade change, and every criterion solved. */
  readonly quotable: boolean;
  /** On the comparison; each result carries its own. */
  readonly warnings: readonly Warning[];
}

/**
 * The strength of a trial by every criterion, how far they lie apart, and whether that means a change of shade.
 *
 * @param reference - one spectrum or reading with its conditions, or repeated ones: `{ weighing: [a, b, c] }`
 * @param trial - the same of the trial, on the same grid
 * @param options - as for `relativeTintingStrength`, without the criterion
 * @returns results, unsolved criteria with their reason, spread in %, and the verdict on shade. Warning codes:
 * `shade-change`, `criteria-unsolved`
 * @throws TintladderError what `relativeTintingStrength` throws, but `no-absorption` and `no-solution` only if no criterion
 * has an answer; `invalid-option` for a threshold that is not positive
 * @example
 * const tint = (...values) => createSpectrum({ start: 400, step: 20, values, scale: 'percent' });
 * const reference = tint(38, 44, 50, 47, 38, 29, 22, 17, 14, 13, 14, 16, 18, 20, 24, 30);
 * compareStrengthCriteria(reference, reference, { viewing: D65_10, surface: 'none' }).shadeChange // false
 * @see `STRENGTH_CRITERIA` for the source of each; the verdict on shade is common practice, no source
 */
export function compareStrengthCriteria(
  reference: Repeated<StrengthReading>,
  trial: Repeated<StrengthReading>,
  options: CompareCriteriaOptions,
): CriteriaComparison {
  assertComparison(options, ['shadeThreshold']);
  const { shadeThreshold = 1, ...comparison } = options;
  if (!(typeof shadeThreshold === 'number' && shadeThreshold > 0 && shadeThreshold < Infinity)) {
    const expected = 'a positive ΔE00';
    throw new TintladderError('invalid-option', { path: 'options.shadeThreshold', received: shadeThreshold, expected });
  }
  const results: StrengthResult[] = [];
  const unsolved: UnsolvedCriterion[] = [];
  const errors: TintladderError[] = [];
  for (const criterion of STRENGTH_CRITERIA) {
    try {
      results.push(relativeTintingStrength(reference, trial, { ...comparison, criterion }));
    } catch (error) {
      if (!(error instanceof TintladderError) || !ANSWERLESS.includes(error.code)) throw error;
      unsolved.push({ criterion, code: error.code, reason: error.message });
      errors.push(error);
    }
  }
  if (results.length === 0) throw errors[0];
  const percents = results.map(({ percent }) => percent);
  const worst = results.reduce((most, result) => (result.residual.dE2000 > most.residual.dE2000 ? result : most));
  const largestResidual = { criterion: worst.criterion, dE2000: worst.residual.dE2000 };
  const spread = Math.max(...percents) - Math.min(...percents);
  const shadeChange = largestResidual.dE2000 > shadeThreshold;
  const warnings: Warning[] = [];
  if (shadeChange) {
    warnings.push({
      code: 'shade-change',
      message:
        `Matched by ${worst.criterion}, trial and reference still differ by ΔE00 ${largestResidual.dE2000.toFixed(2)}, ` +
        `more than ${shadeThreshold}: the shade differs, strengths spread over ${spread.toFixed(1)} %, and no single ` +
        `figure should be quoted.`,
      path: worst.criterion,
      figures: { dE2000: largestResidual.dE2000, threshold: shadeThreshold, spread },
    });
  }
  if (unsolved.length > 0) {
    const names = unsolved.map(({ criterion }) => criterion);
    warnings.push({
      code: 'criteria-unsolved',
      message: `There is no strength by ${names.join(', ')}; the reasons are in unsolved.`,
      figures: { criteria: names },
    });
  }
  return {
    kind: 'criteria-comparison',
    version: 1,
    results,
    unsolved,
    spread,
    largestResidual,
    shadeThreshold,
    shadeChange,
    quotable: !shadeChange && unsolved.length === 0,
    warnings,
  };
}

/** Codes that speak of one criterion, not of the readings. */
const ANSWERLESS: readonly ErrorCode[] = ['no-absorption', 'no-solution'];
