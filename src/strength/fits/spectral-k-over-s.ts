import type { Spectrum } from '../../colorimetry/index.js';
import { ratioOf, unusable } from '../kubelka-munk.js';

/**
 * K/S at each wavelength of an internal reflectance spectrum.
 *
 * @throws TintladderError `zero-reflectance` or `reflectance-out-of-range`, naming the spectrum and the wavelength
 */
export function spectralKOverS({ values, start, interval }: Spectrum, place: string): Float64Array {
  return values.map((R, i) => {
    const ratio = ratioOf(R);
    if (!(R > 0 && R <= 1 && ratio < Infinity)) throw unusable(R, `${place} at ${start + i * interval} nm`);
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
