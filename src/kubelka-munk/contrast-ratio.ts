import { type Spectrum, type Viewing, xyzFromSpectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';

/**
 * Contrast ratio of a film: luminous reflectance Y over black divided by that over white.
 *
 * 1 means that the film hides completely; noise can carry an opaque film a little above. The standards read both over one
 * chart, black and white of about Y = 80, and call 0.98 full hiding.
 *
 * @param overBlack - measured reflectance of the film over black
 * @param overWhite - measured reflectance of the same film over white, on the same grid
 * @param options - viewing: illuminant and observer for Y
 * @returns Y over black / Y over white, a fraction
 * @throws TintladderError `grid-mismatch`; `zero-reflectance` if the film over white has Y = 0; `unknown-illuminant`,
 * `unknown-observer`, `illuminant-range`
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(R), scale: 'fraction' });
 * contrastRatio(flat(0.76), flat(0.8), { viewing: D65_10 }) // 0.95
 * @see ISO 6504-3; ASTM D2805
 */
export function contrastRatio(
  overBlack: Spectrum,
  overWhite: Spectrum,
  options: { readonly viewing: Viewing },
): number {
  assertOptions(options, ['viewing']);
  assertObject(options, 'options', 'the viewing of the contrast ratio');
  return contrastOf(asSpectrum(overBlack, 'overBlack'), asSpectrum(overWhite, 'overWhite'), options.viewing);
}

/** The same of checked spectra. */
function contrastOf(overBlack: Spectrum, overWhite: Spectrum, viewing: Viewing): number {
  assertSameGrid(overBlack, overWhite, 'overWhite');
  const { Y } = xyzFromSpectrum(overWhite, viewing);
  if (Y > 0) return xyzFromSpectrum(overBlack, viewing).Y / Y;
  throw new TintladderError('zero-reflectance', {
    path: 'Y of overWhite',
    received: Y,
    expected: 'a film that reflects some light',
  });
}
