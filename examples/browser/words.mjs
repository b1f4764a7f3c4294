// How figures and findings are written on the page: the same in every locale, with a true minus sign.

export const CRITERION_WORDS = {
  'absorption-maximum': 'K/S at the absorption maximum',
  'kubelka-munk-sum': 'sum of K/S',
  'weighted-sum': 'weighted sum of K/S',
  'lowest-tristimulus': 'lowest tristimulus value',
  'tristimulus-y': 'tristimulus value Y',
  'smallest-difference': 'smallest difference ΔE00',
};

export const FINDING_WORDS = {
  stronger: 'stronger than the reference',
  weaker: 'weaker than the reference',
  'equal-within-margin': 'equal to the reference within the margin',
  undecided: 'not proven different from the reference',
};

export const DIAGNOSIS_WORDS = {
  none: 'nothing found',
  'coloured-pigment-flocculated': 'coloured pigment flocculated',
  'white-pigment-flocculated': 'white pigment flocculated',
  'pigments-separated': 'pigments separated',
  'uneven-film': 'uneven film',
  undetermined: 'cause undetermined',
};

export const CERTAINTY_WORDS = { proven: 'proven', indicated: 'indicated', 'not-shown': 'not ruled out' };

export const ROLE_WORDS = {
  reference: 'Reference, unrubbed',
  referenceRubbed: 'Reference, rubbed',
  trial: 'Trial, unrubbed',
  trialRubbed: 'Trial, rubbed',
  white: 'White base',
};

/** A number with a fixed count of decimals. */
export function fixed(value, decimals) {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `\u2212${text}` : text;
}

/** `104.2 to 107.9`, or a dash where the readings give no interval. */
export function range(interval, decimals) {
  return interval ? `${fixed(interval.low, decimals)} to ${fixed(interval.high, decimals)}` : '–';
}
