import { type Spectrum, type Viewing, xyzFromSpectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import { findRoot } from '../numeric/internal.js';
import { contrastRatio } from './contrast-ratio.js';
import { filmSpectrum } from './film.js';
import { measuredReflectance } from './saunderson.js';
import { assertSurface, type SurfaceCorrection } from './surface.js';

/** A paint by its coefficients, and the two fields of the chart it is drawn over. */
export interface HidingFilm {
  /** K at each wavelength, per unit of thickness */
  readonly absorption: ArrayLike<number>;
  /** S at each wavelength, per unit of thickness */
  readonly scattering: ArrayLike<number>;
  /** Internal reflectance of the black field */
  readonly black: Spectrum;
  /** Internal reflectance of the white field, on the same grid */
  readonly white: Spectrum;
}

/** Options of {@link hidingThickness}. */
export interface HidingOptions {
  readonly viewing: Viewing;
  /**
   * Contrast ratio that counts as hiding, between 0 and 1.
   *
   * @default 0.98
   */
  readonly ratio?: number | undefined;
  /** Surface of the film, so that the contrast ratio is that of measured reflectances; `'none'` takes that of internal ones. */
  readonly surface: SurfaceCorrection;
}

/** The thickness at which a film hides, with its conditions. */
export interface HidingThickness {
  readonly kind: 'hiding-thickness';
  readonly version: 1;
  /** In the unit of thickness that K and S are per */
  readonly thickness: number;
  readonly contrastRatio: number;
  readonly viewing: Viewing;
  readonly surface: SurfaceCorrection;
}

/** Thicknesses are searched from a millionth to 10^9 times the mean free path of the strongest band, eight steps a decade. */
const DECADES = [-6, 9] as const;
const STEPS_A_DECADE = 8;

/**
 * The thickness at which a film reaches a contrast ratio, by root finding on Y over black and over white.
 *
 * If the ratio is reached more than once (a film that hides in one band while another is still clear can do so), it is
 * the thinnest film.
 *
 * @param film - K and S spectra and the reflectances of the black and white fields
 * @param options - viewing, ratio, surface
 * @returns the thickness, in the unit that K and S are per, with its conditions
 * @throws TintladderError `no-solution` if the chart alone already has this ratio or no thickness reaches it; `invalid-option` for a
 * ratio outside 0 to 1; `grid-mismatch`, `wrong-length`, `out-of-range`, `reflectance-out-of-range`; `invalid-option` for a surface that no film can have
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(R), scale: 'fraction' });
 * const film = { absorption: Array(31).fill(0), scattering: Array(31).fill(0.5), black: flat(0), white: flat(0.8) };
 * hidingThickness(film, { viewing: D65_10, surface: 'none' }).thickness // 23.443
 * @see ISO 6504-3; ASTM D2805; Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function hidingThickness(film: HidingFilm, options: HidingOptions): HidingThickness {
  assertObject(film, 'film', 'a paint by its coefficients and its chart');
  assertOptions(options, ['viewing', 'ratio', 'surface']);
  assertObject(options, 'options', 'viewing and surface');
  const { viewing, ratio = 0.98, surface } = options;
  assertSurface(surface, 'options.surface');
  const { absorption, scattering } = film;
  const black = asSpectrum(film.black, 'film.black');
  const white = asSpectrum(film.white, 'film.white');
  if (!(typeof ratio === 'number' && ratio > 0 && ratio < 1)) {
    throw new TintladderError('invalid-option', {
      path: 'options.ratio',
      received: ratio,
      expected: 'a contrast ratio between 0 and 1',
    });
  }
  assertSameGrid(black, white, 'white');
  const over = (substrate: Spectrum, thickness: number) =>
    measuredReflectance(filmSpectrum({ absorption, scattering, thickness, substrate }), surface);
  const bare = contrastRatio(over(black, 0), over(white, 0), { viewing });
  if (bare >= ratio) {
    throw unreachable(bare, `a chart with a contrast ratio below the one asked for, ${ratio}`);
  }
  // A film that only absorbs is black over both fields in the end, but never alike: it keeps the contrast of the chart.
  const contrastAt = (thickness: number) => {
    const overWhite = xyzFromSpectrum(over(white, thickness), viewing).Y;
    return overWhite > 0 ? xyzFromSpectrum(over(black, thickness), viewing).Y / overWhite : bare;
  };
  const excess = (thickness: number) => contrastAt(thickness) - ratio;
  // Without absorption and scattering every path is endless, and even that film is clear.
  const strongest = Math.max(...Array.from(absorption), ...Array.from(scattering));
  const path = (step: number) => 10 ** (DECADES[0] + step / STEPS_A_DECADE) / strongest;
  const steps = (DECADES[1] - DECADES[0]) * STEPS_A_DECADE;
  for (let step = 0; step <= steps; step++) {
    const high = path(step);
    if (excess(high) < 0) continue;
    const thickness = findRoot(excess, step === 0 ? 0 : path(step - 1), high, high * Number.EPSILON);
    return { kind: 'hiding-thickness', version: 1, thickness, contrastRatio: ratio, viewing, surface };
  }
  throw unreachable(contrastAt(path(steps)), `a film that can reach ${ratio}`);
}

/**
 * Spreading rate: the area that one litre of paint covers at a film thickness.
 *
 * One litre is 10^-3 m³, a film of X µm holds X · 10^-6 m³ on each m²: 1000 / X m²/L. For a dry film only the volume solids
 * stay: 1000 · solids / X.
 *
 * @param thickness - of the film, µm, > 0; wet unless `volumeSolids` is given
 * @param options - volumeSolids: share of the paint's volume that stays as dry film, above 0 to 1, if the thickness is a dry one
 * @returns m² per litre of paint
 * @throws TintladderError `out-of-range` for a thickness that is not positive; `invalid-option` for volume solids outside 0 to 1
 * @example spreadingRate(125) // 8
 * @example spreadingRate(50, { volumeSolids: 0.4 }) // 8
 * @see ISO 6504-3 and ASTM D2805 for the spreading rate; the relation is that of volume, area and thickness
 */
export function spreadingRate(thickness: number, options: { readonly volumeSolids?: number | undefined } = {}): number {
  assertOptions(options, ['volumeSolids']);
  const { volumeSolids = 1 } = options;
  if (!(typeof thickness === 'number' && thickness > 0 && thickness < Infinity)) {
    throw new TintladderError('out-of-range', {
      path: 'thickness',
      received: thickness,
      expected: 'a thickness above 0 µm',
    });
  }
  if (!(typeof volumeSolids === 'number' && volumeSolids > 0 && volumeSolids <= 1)) {
    throw new TintladderError('invalid-option', {
      path: 'options.volumeSolids',
      received: volumeSolids,
      expected: 'a fraction above 0, up to 1',
    });
  }
  return (1000 * volumeSolids) / thickness;
}

function unreachable(received: number, expected: string): TintladderError {
  return new TintladderError('no-solution', { path: 'contrast ratio', received, expected });
}
