import type { Spectrum } from '../../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../../colorimetry/internal.js';
import { ratioOf, unusable } from '../../kubelka-munk/internal.js';

/**
 * K/S at each wavelength of an internal reflectance spectrum.
 *
 * @throws TintladderError `zero-reflectance` or `reflectance-out-of-range`, naming the spectrum and the wavelength
 */
export function spectralKOverS({ values, start, step }: Spectrum, path: string): Float64Array {
  return values.map((R, i) => {
    const ratio = ratioOf(R);
    if (!(R > 0 && R <= 1 && ratio < Infinity)) throw unusable(R, `${path} at ${start + i * step} nm`);
    return ratio;
  });
}

/** Near a perfect white a reflectance error hardly moves K/S; weights there stop growing. */
const WHITEST = 0.99;

/** |dR / d(K/S)|: with it, an error of K/S counts as the error of reflectance that would cause it. */
export function reflectancePerKOverS(reflectance: number): number {
  const R = Math.min(reflectance, WHITEST);
  return (2 * R * R) / (1 - R * R);
}

/**
 * K/S that a colorant adds to its white: what `resolveColorants` takes.
 *
 * @param tint - internal reflectance of a tint with this colorant alone
 * @param white - internal reflectance of the white base, on the same grid
 * @returns K/S of the tint minus that of the white, at each wavelength
 * @throws TintladderError `wrong-type`, `grid-mismatch`, `zero-reflectance`, `reflectance-out-of-range`, what `createSpectrum` throws
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * addedKOverS(flat(0.2), flat(0.5))[0] // 1.35
 * @see Kubelka & Munk (1931), Z. tech. Phys. 12
 */
export function addedKOverS(tint: Spectrum, white: Spectrum): readonly number[] {
  const [of, base] = [asSpectrum(tint, 'tint'), asSpectrum(white, 'white')];
  assertSameGrid(of, base, 'white');
  const whiteRatio = spectralKOverS(base, 'white');
  return Array.from(spectralKOverS(of, 'tint'), (ratio, i) => ratio - whiteRatio[i]);
}
