import { TintladderError, type Warning } from '../../core/index.js';
import { assertObject, assertOptions } from '../../core/internal.js';
import type { AmountExponent, ExponentBasis } from './amount-exponent.js';

/** The systematic term of a strength over unequal amounts. */
export interface AmountTerm {
  readonly kind: 'amount-term';
  readonly version: 1;
  /** Strength corrected by the exponent itself, %, with the strengths that its bounds give */
  readonly percent: number;
  readonly low: number;
  readonly high: number;
  /** How often the reference's colorant per white is in the trial */
  readonly ratio: number;
  readonly level: number;
  readonly basis: ExponentBasis;
  readonly source: string;
  readonly warnings: readonly Warning[];
}

/** Beyond this ratio of amounts single-constant strength goes wrong by more than replicates show (reading of the measured paints). */
const FAR_APART = 1.5;

/**
 * What single-constant theory leaves open in a strength, as a term of its own that no replicate shows.
 *
 * With absorption growing as `amount^e`, single-constant theory, which has e = 1, reads a strength s over r times the amount as
 * `s^e r^(e - 1)`. The term turns that round for the exponent: `s = (percent r^(1 - e))^(1/e)`. Its bounds have two parts: (high - low) / 2 times
 * log r for the unequal amounts, and (1/low - 1/high) / 2 times the logarithm of the strength for its own distance from 100 %, which is what is
 * left at equal amounts. The slope of a ladder over its length and near one step are two figures, so the parts add as squares. The term is not
 * scatter: widen the interval from replicates by it, end by end.
 *
 * @param percent - strength by single-constant theory with the amounts counted in, %
 * @param options - ratio: the trial's colorant per white over the reference's, 1 for equal amounts; exponent: from `fitAmountExponent`, or
 * `oilPaintExponent`
 * @returns corrected strength with bounds, the ratio, and what the exponent rests on; warning `amounts-far-apart` beyond a ratio of 1.5
 * @throws TintladderError `out-of-range` for a strength that is not positive; `invalid-option` for a ratio or exponent that is not positive
 * @example
 * const exponent = { ...oilPaintExponent({ criterion: 'absorption-maximum' }), exponent: 0.8, low: 0.6, high: 1 };
 * amountTerm(63.0957, { ratio: 10, exponent }).percent // 100.00
 * @see our own form, no source; the measured paints behind it: Geldof et al. (2018), Heritage Science 6:17
 */
export function amountTerm(
  percent: number,
  options: { readonly ratio: number; readonly exponent: AmountExponent },
): AmountTerm {
  assertObject(options, 'options', 'ratio and exponent');
  assertOptions(options, ['ratio', 'exponent']);
  const { ratio, exponent } = options;
  assertObject(exponent, 'options.exponent', 'an exponent of ours');
  if (!(typeof percent === 'number' && percent > 0 && percent < Infinity)) {
    throw new TintladderError('out-of-range', { path: 'percent', received: percent, expected: 'a strength above 0 %' });
  }
  if (!(typeof ratio === 'number' && ratio > 0 && ratio < Infinity)) {
    const expected = 'a ratio of amounts above 0';
    throw new TintladderError('invalid-option', { path: 'options.ratio', received: ratio, expected });
  }
  for (const name of ['exponent', 'low', 'high'] as const) {
    if (typeof exponent[name] === 'number' && exponent[name] > 0 && exponent[name] < Infinity) continue;
    const expected = 'an exponent above 0';
    throw new TintladderError('invalid-option', {
      path: `options.exponent.${name}`,
      received: exponent[name],
      expected,
    });
  }
  const { level, basis, source } = exponent;
  const logRatio = Math.log(ratio);
  const counted = Math.log(percent / 100) + (1 - exponent.exponent) * logRatio;
  const ofAmounts = ((exponent.high - exponent.low) / 2) * logRatio;
  const ofStrength = ((1 / exponent.low - 1 / exponent.high) / 2) * counted;
  const centre = counted / exponent.exponent;
  const half = Math.hypot(ofAmounts, ofStrength);
  const [low, high] = [100 * Math.exp(centre - half), 100 * Math.exp(centre + half)];
  return {
    kind: 'amount-term',
    version: 1,
    percent: 100 * Math.exp(centre),
    low,
    high,
    ratio,
    level,
    basis,
    source,
    warnings: Math.max(ratio, 1 / ratio) > FAR_APART ? [farApart(ratio, low, high, source)] : [],
  };
}

function farApart(ratio: number, low: number, high: number, source: string): Warning {
  return {
    code: 'amounts-far-apart',
    message: `The trial holds ${ratio.toPrecision(3)} times the reference's colorant per white: over such a ratio absorption does not grow in proportion, and the strength lies between ${low.toFixed(0)} and ${high.toFixed(0)} % by ${source}.`,
    path: 'options.amounts',
    figures: { ratio, low, high, source },
  };
}
