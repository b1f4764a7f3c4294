import { createSpectrum, type Spectrum } from '../../../src/colorimetry/index.js';
import { reflectanceFromKOverS } from '../../../src/strength/index.js';

// Invented K and S curves of a white and three colorants; nothing here was measured.
export const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

const band = (centre: number, width: number) => WAVELENGTHS.map((nm) => Math.exp(-(((nm - centre) / width) ** 2)));
const [blueBand, redBand, redEdge] = [band(615, 70), band(530, 45), band(430, 40)];

/** K of the white, whose S is 1: a band edge at 400 nm as titanium dioxide has one. */
export const WHITE = WAVELENGTHS.map((nm) => 0.0015 + 0.25 * Math.exp((400 - nm) / 8));
export const BLUE = blueBand.map((k) => k + 0.05);
export const RED = redBand.map((k, i) => k + 0.1 * redEdge[i] + 0.01);
export const BLACK = WAVELENGTHS.map(() => 1);

export function spectrumOf(ratios: ArrayLike<number>): Spectrum {
  const values = Array.from(ratios, (ratio) => reflectanceFromKOverS(ratio));
  return createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
}
