import { createSpectrum, type Spectrum } from '../../src/index.js';

// Invented films for the tests: the textbook Kubelka-Munk forms, no surface.

/** Spectrum of an opaque film from its K/S at each wavelength, 400 to 700 nm in steps of 10. */
export function filmOf(ratioAt: (nm: number) => number): Spectrum {
  const values = Array.from({ length: 31 }, (_, i) => {
    const ratio = ratioAt(400 + 10 * i);
    return 1 + ratio - Math.sqrt(ratio * ratio + 2 * ratio);
  });
  return createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
}

export const blue = (nm: number) => 0.6 * Math.exp(-(((nm - 610) / 60) ** 2));
export const yellow = (nm: number) => 0.5 / (1 + Math.exp((nm - 490) / 12));
const FLOOR = 0.002;

/** A tint of the two pigments in a white, each taken so many times. */
export function tint(ofBlue: number, ofYellow = 0): Spectrum {
  return filmOf((nm) => FLOOR + ofBlue * blue(nm) + ofYellow * yellow(nm));
}

export const WHITE = filmOf(() => FLOOR);

/** Spots of one area: small steps of strength around a tint, so that there is a known, small scatter. */
export function spots(ofBlue: number, ofYellow = 0): Spectrum[] {
  return [0.998, 1, 1.002].map((factor) => tint(ofBlue * factor, ofYellow * factor));
}
