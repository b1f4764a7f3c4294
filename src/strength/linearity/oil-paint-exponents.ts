import { TintladderError } from '../../core/index.js';
import { assertArray, assertObject, assertOptions } from '../../core/internal.js';
import { median } from '../../numeric/internal.js';
import { assertCriterion, type StrengthCriterion } from '../criteria/strength-criterion.js';
import type { AmountExponent } from './amount-exponent.js';

/**
 * The colorants of the measured pairs, in the order of the exponents: ten at 4 to 15 times the amount (about 10 and 50 mass % in zinc
 * white), and two at a second, paler pair of steps.
 *
 * @example OIL_PAINT_PAIRS.length // 12
 * @see Geldof, Proaño Gaibor, Kirchner, Ligterink (2018), Heritage Science 6:17, for the readings
 */
export const OIL_PAINT_PAIRS = Object.freeze([
  'eosin in wax',
  'eosin',
  'eosin, lead, in wax',
  'cochineal',
  'minium',
  'viridian green',
  'ultramarine blue',
  'cobalt blue',
  'prussian blue',
  'chrome yellow',
  'cochineal, pale',
  'prussian blue, pale',
] as const);

/**
 * Exponents of each pair, by criterion: log of the apparent against log of the true ratio of amounts, k1 from the deepest mass tone of each
 * colorant and k2 0.5. Found by `tests/reality/single-constant.test.ts`, which compares them with the readings.
 */
const EXPONENTS: Readonly<Record<StrengthCriterion, readonly number[]>> = {
  'absorption-maximum': [1.681, 1.518, 1.265, 1.042, 0.993, 0.983, 0.78, 0.846, 0.851, 0.725, 0.891, 1.13],
  'kubelka-munk-sum': [1.636, 1.446, 1.196, 1.043, 0.999, 0.976, 0.795, 0.824, 0.719, 0.725, 0.92, 1.159],
  'weighted-sum': [1.633, 1.44, 1.199, 1.047, 0.997, 0.986, 0.8, 0.835, 0.702, 0.728, 0.914, 1.179],
  'lowest-tristimulus': [1.563, 1.387, 1.163, 1.028, 1.012, 0.984, 0.813, 0.817, 0.791, 0.733, 0.908, 1.181],
  'tristimulus-y': [1.67, 1.399, 1.191, 1.028, 0.966, 0.97, 0.813, 0.819, 0.817, 0.573, 0.908, 1.18],
  'smallest-difference': [1.704, 1.521, 1.291, 1.03, 0.981, 0.982, 0.821, 0.821, 0.858, 0.545, 0.886, 1.18],
};

/** About as far as a normal deviate reaches in five cases of six; chosen on these very pairs. */
const FIVE_OF_SIX = 1.4;
/** A median absolute deviation times this is the standard deviation of normal figures. */
const NORMAL = 1.4826;

/**
 * The exponent that measured oil paints had, for whoever has no ladder of their own. They are other paints than yours: the bounds are what
 * twelve pairs of reductions of ten colorants in zinc white leave open, and say more about how far single-constant theory may be off than
 * about any one colorant.
 *
 * The bounds are the median and 1.4 times the median absolute deviation (scaled to a standard deviation) to each side, meant for five
 * pairs of six; three of the colorants are dyes that fluoresce and lie outside. A colorant that is itself on trial can be left out.
 *
 * @param options - criterion; without: names of {@link OIL_PAINT_PAIRS} to leave out
 * @returns exponent and bounds, with the basis `oil-paints`
 * @throws TintladderError `invalid-option` for an unknown criterion or name; `too-few-points` if fewer than four pairs are left
 * @example oilPaintExponent({ criterion: 'absorption-maximum' }).basis // 'oil-paints'
 * @see Geldof, Proaño Gaibor, Kirchner, Ligterink (2018), Heritage Science 6:17, for the readings; the bounds are our own rule, no source
 */
export function oilPaintExponent(options: {
  readonly criterion: StrengthCriterion;
  readonly without?: readonly (typeof OIL_PAINT_PAIRS)[number][] | undefined;
}): AmountExponent {
  assertObject(options, 'options', 'the criterion of the strength');
  assertOptions(options, ['criterion', 'without']);
  const { criterion, without = [] } = options;
  assertArray(without, 'options.without');
  assertCriterion(criterion);
  without.forEach((name, i) => {
    if (OIL_PAINT_PAIRS.includes(name)) return;
    const expected = `one of ${OIL_PAINT_PAIRS.join('; ')}`;
    throw new TintladderError('invalid-option', { path: `options.without[${i}]`, received: name, expected });
  });
  const kept = EXPONENTS[criterion].filter((_, i) => !without.includes(OIL_PAINT_PAIRS[i]));
  if (kept.length < 4) {
    throw new TintladderError('too-few-points', {
      path: 'options.without',
      received: without.length,
      expected: 'at least four pairs that are not left out',
    });
  }
  const exponent = median(kept);
  const half = FIVE_OF_SIX * NORMAL * median(kept.map((value) => Math.abs(value - exponent)));
  return {
    kind: 'amount-exponent',
    version: 1,
    exponent,
    low: exponent - half,
    high: exponent + half,
    level: 5 / 6,
    criterion,
    basis: 'oil-paints',
    source: `${kept.length} pairs of measured oil paints, not yours (Geldof et al. 2018)`,
    pairs: kept.length,
  };
}
