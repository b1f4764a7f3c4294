import type { Outcome, RubOutCertainty, RubOutDiagnosis } from '../rubout/index.js';
import type { StrengthCriterion, StrengthFinding } from '../strength/index.js';
import { quantityName } from '../study/quantities.js';

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

/** How sure a diagnosis is. */
export const CERTAINTY_WORDS: Readonly<Record<RubOutCertainty, string>> = {
  proven: 'proven',
  indicated: 'indicated',
  'not-shown': 'not ruled out',
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

/** A quantity as it stands in a table, with a capital. */
export function quantityWords(quantity: string): string {
  const name = quantityName(quantity);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
