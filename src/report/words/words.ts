import type { Outcome } from '../../decision/index.js';
import type { RubOutCertainty, RubOutDiagnosis } from '../../rubout/index.js';
import type { StrengthCriterion, StrengthFinding } from '../../strength/index.js';
import { quantityName } from '../../study/index.js';

/**
 * The outcomes of a judgement as reports write them, so that none is shown by colour alone; by `Outcome`.
 *
 * @example OUTCOME_WORDS.undecided // 'undecided'
 */
export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = Object.freeze({
  meets: 'meets',
  fails: 'fails',
  undecided: 'undecided',
});

/**
 * What a rub-out shows, in the words of the trade; by `RubOutDiagnosis`.
 *
 * @example DIAGNOSIS_WORDS['pigments-separated'] // 'pigments separated'
 */
export const DIAGNOSIS_WORDS: Readonly<Record<RubOutDiagnosis, string>> = Object.freeze({
  none: 'no finding',
  'coloured-pigment-flocculated': 'coloured pigment flocculated',
  'white-pigment-flocculated': 'white pigment flocculated',
  'pigments-separated': 'pigments separated',
  'uneven-film': 'uneven film',
  undetermined: 'cause undetermined',
});

/**
 * How sure the diagnosis of a rub-out is; by `RubOutCertainty`.
 *
 * @example CERTAINTY_WORDS['not-shown'] // 'not ruled out'
 */
export const CERTAINTY_WORDS: Readonly<Record<RubOutCertainty, string>> = Object.freeze({
  proven: 'proven',
  indicated: 'indicated',
  'not-shown': 'not ruled out',
});

/**
 * The criteria of strength as reports write them; by `StrengthCriterion`.
 *
 * @example CRITERION_WORDS['tristimulus-y'] // 'tristimulus value Y'
 */
export const CRITERION_WORDS: Readonly<Record<StrengthCriterion, string>> = Object.freeze({
  'absorption-maximum': 'K/S at the absorption maximum',
  'kubelka-munk-sum': 'sum of K/S',
  'weighted-sum': 'weighted sum of K/S',
  'lowest-tristimulus': 'lowest tristimulus value',
  'tristimulus-y': 'tristimulus value Y',
  'smallest-difference': 'smallest colour difference ΔE00',
});

/**
 * What the interval of a strength says of 100 %; by `StrengthFinding`.
 *
 * @example FINDING_WORDS.undecided // 'not proven different'
 */
export const FINDING_WORDS: Readonly<Record<StrengthFinding, string>> = Object.freeze({
  stronger: 'stronger',
  weaker: 'weaker',
  'equal-within-margin': 'equal within the margin',
  undecided: 'not proven different',
});

/** A quantity as it stands in a table, with a capital. */
export function quantityWords(quantity: string): string {
  const name = quantityName(quantity);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
