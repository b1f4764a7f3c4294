import type { Outcome } from '../../decision/index.js';
import type { CauseStanding, RubOutCause, RubOutDirection, RubOutFinding } from '../../rubout/index.js';
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
 * The causes of a rub-out difference, in the words of the trade; by `RubOutCause`.
 *
 * @example RUB_OUT_CAUSE_WORDS['pigments-separated'] // 'pigments separated'
 */
export const RUB_OUT_CAUSE_WORDS: Readonly<Record<RubOutCause, string>> = Object.freeze({
  'coloured-pigment-flocculated': 'coloured pigment flocculated',
  'white-pigment-flocculated': 'white pigment flocculated',
  'both-flocculated': 'both pigments flocculated',
  'one-colorant-flocculated': 'one colorant flocculated',
  'pigments-separated': 'pigments separated',
  'surface-changed': 'surface changed',
  'thickness-changed': 'thickness changed',
  'uneven-film': 'uneven film',
});

/**
 * How a cause stands; by `CauseStanding`.
 *
 * @example CAUSE_STANDING_WORDS['ruled-out'] // 'ruled out'
 */
export const CAUSE_STANDING_WORDS: Readonly<Record<CauseStanding, string>> = Object.freeze({
  'fits-alone': 'fits alone',
  fits: 'fits',
  'ruled-out': 'ruled out',
  'not-weighed': 'not weighed',
});

/**
 * Which way rubbing moved the colour; by `towards` of a `RubOutDirection`.
 *
 * @example RUB_OUT_DIRECTION_WORDS['more-white'] // 'more white by rubbing'
 */
export const RUB_OUT_DIRECTION_WORDS: Readonly<Record<RubOutDirection['towards'], string>> = Object.freeze({
  'more-colour': 'more colour by rubbing',
  'more-white': 'more white by rubbing',
  'another-shade': 'another shade by rubbing',
});

/**
 * What the readings of a rub-out show; by `RubOutFinding`.
 *
 * @example RUB_OUT_FINDING_WORDS.open // 'nothing shown yet'
 */
export const RUB_OUT_FINDING_WORDS: Readonly<Record<RubOutFinding, string>> = Object.freeze({
  difference: 'small difference',
  'none-visible': 'no visible difference',
  open: 'nothing shown yet',
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
