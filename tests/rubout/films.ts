import { createSpectrum, measuredReflectance, type Spectrum, type Surface } from '../../src/index.js';

// Invented films for the tests: the textbook Kubelka-Munk forms.

export const SURFACE: Surface = { external: 0.04, internal: 0.6, specular: 'excluded' };
export const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

export const spectrumOf = (values: readonly number[]): Spectrum =>
  createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });

/** Internal reflectance of an opaque film, the textbook form. */
export const opaque = (ratio: number): number => 1 + ratio - Math.sqrt(ratio * ratio + 2 * ratio);

/** Spectrum of an opaque film from its K/S at each wavelength, 400 to 700 nm in steps of 10; no surface. */
export function filmOf(ratioAt: (nm: number) => number): Spectrum {
  return spectrumOf(WAVELENGTHS.map((nm) => opaque(ratioAt(nm))));
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
export function spots(ofBlue: number, ofYellow = 0): { readonly spot: readonly Spectrum[] } {
  return { spot: [0.998, 1, 1.002].map((factor) => tint(ofBlue * factor, ofYellow * factor)) };
}

/** What is changed in a film of blue and a white with its own absorption at 400 nm, read through {@link SURFACE}. */
export interface Made {
  readonly colour?: number;
  readonly scattering?: number;
  readonly gloss?: number;
  readonly yellow?: number;
}

const whiteOf = (nm: number) => FLOOR + 0.05 / (1 + Math.exp((nm - 405) / 5));

export function filmRow({ colour = 1, scattering = 1, gloss = 0, yellow: ofYellow = 0 }: Made = {}): number[] {
  return WAVELENGTHS.map((nm) => {
    const ratio = (whiteOf(nm) + colour * blue(nm) + ofYellow * yellow(nm)) / scattering;
    return measuredReflectance(opaque(ratio), SURFACE) + gloss;
  });
}

/** Spots of such a film with a gain of 0.1 % and a little at each wavelength by itself. */
export function spotsOf(made: Made = {}, count = 3): { readonly spot: readonly Spectrum[] } {
  const row = filmRow(made);
  return {
    spot: Array.from({ length: count }, (_, k) => {
      const gain = 1 + 0.001 * Math.sin(5 * k + 1);
      return spectrumOf(row.map((R, i) => R * gain + 0.0002 * Math.cos(3 * k + i * i)));
    }),
  };
}
