import { TintladderError } from '../core/index.js';
import { assertFloat64Array, rowsOutput } from '../core/internal.js';

/**
 * Kubelka-Munk ratio K/S of absorption to scattering of an opaque layer.
 *
 * @param reflectance - internal reflectance of the layer, a fraction above 0, up to 1; correct a measured value for its
 * surface with `internalReflectance` first
 * @returns K/S >= 0, within 1e-13 relative of exact arithmetic
 * @throws TintladderError `zero-reflectance` at 0, where K/S has no bound (and below 3e-309, where it exceeds a double);
 * `reflectance-out-of-range` below 0 or above 1; `not-finite`
 * @example kOverS(0.2) // 1.6
 * @see Kubelka & Munk (1931), Z. tech. Phys. 12; ISO 787-24 and ISO 18314-2 use it
 */
export function kOverS(reflectance: number): number {
  const ratio = ratioOf(reflectance);
  const usable = typeof reflectance === 'number' && reflectance > 0 && reflectance <= 1 && ratio < Infinity;
  if (!usable) throw unusable(reflectance, 'reflectance');
  return ratio;
}

/**
 * Reflectance of an opaque layer from its K/S: the inverse of {@link kOverS}.
 *
 * Written as `1 / (1 + F + √F √(F + 2))`, since the textbook form `1 + F - √(F² + 2F)` loses all digits above K/S of 1e8.
 *
 * @param ratio - K/S >= 0
 * @returns internal reflectance, a fraction above 0, up to 1
 * @throws TintladderError `out-of-range` for a negative K/S, `not-finite`
 * @example reflectanceFromKOverS(0.25) // 0.5
 * @see Kubelka (1948), J. Opt. Soc. Am. 38
 */
export function reflectanceFromKOverS(ratio: number): number {
  if (!Number.isFinite(ratio)) {
    throw new TintladderError('not-finite', { path: 'K/S', received: ratio, expected: 'a finite number' });
  }
  if (ratio < 0) throw new TintladderError('out-of-range', { path: 'K/S', received: ratio, expected: 'zero or more' });
  return opaqueReflectance(ratio);
}

/**
 * K/S of many reflectances at once, equal to the bit to {@link kOverS} of each.
 *
 * @param values - internal reflectances, fractions above 0, up to 1
 * @param out - filled and returned if given; may be `values` itself
 * @returns one K/S for each value
 * @throws TintladderError `zero-reflectance`, `reflectance-out-of-range` or `not-finite` naming the index of the value;
 * `wrong-length` if `out` has another length
 * @example Array.from(kOverSRows(Float64Array.of(0.1, 0.5))) // [4.05, 0.25]
 * @see Kubelka & Munk (1931), Z. tech. Phys. 12
 */
export function kOverSRows(values: Float64Array, out?: Float64Array): Float64Array {
  assertFloat64Array(values, 'values');
  const ratios = rowsOutput(out, values.length);
  for (let i = 0; i < values.length; i++) {
    const reflectance = values[i];
    const ratio = ratioOf(reflectance);
    if (!(reflectance > 0 && reflectance <= 1 && ratio < Infinity)) throw unusable(reflectance, `values[${i}]`);
    ratios[i] = ratio;
  }
  return ratios;
}

/** K/S without any check, for callers that have made sure of 0 < R <= 1. */
export function ratioOf(reflectance: number): number {
  const rest = 1 - reflectance;
  return (rest * rest) / (2 * reflectance);
}

/** Reflectance without any check, for callers that have made sure of a finite K/S >= 0. */
export function opaqueReflectance(ratio: number): number {
  // Halves keep the sum below the largest double.
  return 0.5 / (0.5 + ratio / 2 + (Math.sqrt(ratio) * Math.sqrt(ratio + 2)) / 2);
}

/** The fault of a reflectance that has no finite K/S. */
export function unusable(reflectance: number, path: string, hint?: string): TintladderError {
  const expected = 'a fraction above 0, up to 1';
  if (!Number.isFinite(reflectance)) {
    return new TintladderError('not-finite', { path, received: reflectance, expected: 'a finite number' });
  }
  if (reflectance < 0 || reflectance > 1) {
    return new TintladderError('reflectance-out-of-range', { path, received: reflectance, expected, hint });
  }
  return new TintladderError('zero-reflectance', {
    path,
    received: reflectance,
    expected,
    hint: hint ?? 'A layer that reflects nothing has no finite K/S; measure a lighter reduction.',
  });
}
