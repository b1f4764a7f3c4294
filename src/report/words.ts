import type { Outcome, RubOutDiagnosis } from '../rubout/index.js';
import type { StrengthCriterion, StrengthFinding } from '../strength/index.js';
import type { ComputedQuantity } from '../study/index.js';

/** The outcomes as they are written everywhere, so that none is shown by colour alone. */
export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  meets: 'meets',
  fails: 'fails',
  undecided: 'undecided',
};

/** What a rub-out shows, in the words of the trade. */
export const DIAGNOSIS_WORDS: Readonly<Record<RubOutDiagnosis, string>> = {
  none: 'no finding',
  'coloured-pigment-flocculated': 'coloured pigment flocculated',
  'white-pigment-flocculated': 'white pigment flocculated',
  'pigments-separated': 'pigments separated',
  'uneven-film': 'uneven film',
  undetermined: 'cause undetermined',
};

/** The criteria of strength. */
export const CRITERION_WORDS: Readonly<Record<StrengthCriterion, string>> = {
  'absorption-maximum': 'K/S at the absorption maximum',
  'kubelka-munk-sum': 'sum of K/S',
  'weighted-sum': 'weighted sum of K/S',
  'lowest-tristimulus': 'lowest tristimulus value',
  'tristimulus-y': 'tristimulus value Y',
  'smallest-difference': 'smallest colour difference ΔE00',
};

/** What the interval of a strength says against 100 %. */
export const FINDING_WORDS: Readonly<Record<StrengthFinding, string>> = {
  stronger: 'stronger',
  weaker: 'weaker',
  'equal-within-margin': 'equal within the margin',
  undecided: 'not proven different',
};

const QUANTITY_WORDS: Readonly<Record<ComputedQuantity, string>> = {
  strength: 'Relative tinting strength',
  residual: 'Residual difference at equal strength',
  'rub-out': 'Rub-out difference',
  'strength-after-storage': 'Strength after storage',
  'rub-out-after-storage': 'Rub-out difference after storage',
  'time-to-reference': 'Grinding time to the strength of the reference',
  'time-to-95': 'Grinding time to 95 % of the final strength',
  'optimum-dosage': 'Dosage at the start of the plateau',
  'additive-share': 'Additive in the finished colorant',
};

/** A quantity as it stands in a table; a supplied one keeps the name the study gives it, with a capital. */
export function quantityWords(quantity: string): string {
  if (Object.hasOwn(QUANTITY_WORDS, quantity)) return QUANTITY_WORDS[quantity as ComputedQuantity];
  return quantity.charAt(0).toUpperCase() + quantity.slice(1);
}
