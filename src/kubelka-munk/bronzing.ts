import type { Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import type { Warning } from '../core/index.js';
import { ratioOf } from './kubelka-munk.js';
import { wavelengthRuns } from './wavelength-runs.js';

/** A mass tone that is lighter than its tint by more than this is no noise (our own rule; the measured paints that don't bronze stay below). */
const LIGHTER = 0.003;
/** Looked for only where the tint absorbs at least this share of its maximum. */
const ABSORBING = 0.3;

/**
 * Whether a mass tone bronzes: it is lighter than a tint of its colorant in white where that tint absorbs most.
 *
 * By Kubelka-Munk theory a colorant can't be lighter alone than with white added where it absorbs. Where it is, its surface reflects: so
 * strong an absorption makes a metal-like mirror of it, or pigment lies bare on the film. K/S from such a mass tone means nothing at these
 * wavelengths, and two-constant coefficients from it are wrong.
 *
 * @param masstone - reflectance of the colorant alone, internal or measured as the others
 * @param tint - reflectance of the colorant in white, on the same grid
 * @returns warning `bronzing` with its wavelengths, or nothing
 * @throws TintladderError `grid-mismatch`
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * bronzingWarnings(flat(0.058), flat(0.038))[0].path // '400-410 nm'
 * @see Kubelka & Munk (1931) for what is contradicted; the limit is our own rule, tried on measured paints (Geldof et al. 2018)
 */
export function bronzingWarnings(masstone: Spectrum, tint: Spectrum): Warning[] {
  return bronzing(asSpectrum(masstone, 'masstone'), asSpectrum(tint, 'tint'));
}

/** The same of checked spectra. */
function bronzing(masstone: Spectrum, tint: Spectrum): Warning[] {
  assertSameGrid(tint, masstone, 'masstone');
  const ratios = tint.values.map((value) => (value > 0 ? ratioOf(value) : Infinity));
  const strongest = Math.max(...ratios);
  const wavelengths = Array.from(ratios.keys())
    .filter((i) => ratios[i] >= ABSORBING * strongest && masstone.values[i] > tint.values[i] + LIGHTER)
    .map((i) => tint.start + i * tint.step);
  if (wavelengths.length === 0) return [];
  const path = wavelengthRuns(wavelengths, tint.step);
  return [
    {
      code: 'bronzing',
      message: `The mass tone is lighter than its tint at ${path}, where the colorant absorbs: it bronzes, or lies bare at the surface. Its K/S means nothing there; take a strong reduction in its place.`,
      path,
      figures: { wavelengths },
    },
  ];
}
