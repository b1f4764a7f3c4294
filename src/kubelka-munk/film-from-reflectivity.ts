import type { Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import { assertInternal } from './film.js';
import type { FilmCoefficientSpectra, FilmCoefficients } from './film-coefficients.js';
import { assertThickness, opaqueSpectrum } from './film-coefficients.js';

/** A film read over one substrate, and an opaque layer of the same paint; internal reflectances at one wavelength, 0 to 1. */
export interface FilmAndReflectivity {
  readonly reading: number;
  /** Reflectance of the substrate itself */
  readonly substrate: number;
  /** R infinity: reflectance of a layer that hides its substrate */
  readonly opaqueReflectance: number;
  /** X, > 0; K and S come out per unit of it */
  readonly thickness: number;
}

/** A film read over one substrate, and an opaque layer of the same paint; spectra on one grid. */
export interface FilmAndReflectivitySpectra {
  readonly reading: Spectrum;
  readonly substrate: Spectrum;
  readonly opaqueReflectance: Spectrum;
  readonly thickness: number;
}

/**
 * K and S of a film from one reading over a known substrate and the reflectance of an opaque layer.
 *
 * Every digit of the readings is used: the value is exact to the last digits. An error of the reading passes into K and S as
 * error / |reading - opaqueReflectance|, relative to 2bSX, so that a film near to opaque says little.
 *
 * @param film - reading, substrate, R infinity and thickness
 * @returns K and S per unit of thickness, and R infinity as given
 * @throws TintladderError `film-opaque` if the reading equals R infinity; `no-solution` if it doesn't lie between the substrate and
 * R infinity, or these two are equal; `reflectance-out-of-range`; `out-of-range` for a thickness that is not positive
 * @example filmCoefficientsFromReflectivity({ reading: 0.5, substrate: 0, opaqueReflectance: 1, thickness: 4 }).scattering // 0.25
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457; ASTM D2805 for the reading over one substrate with the reflectivity
 */
export function filmCoefficientsFromReflectivity(film: FilmAndReflectivity): FilmCoefficients {
  assertObject(film, 'film', 'the readings of a film');
  assertThickness(film.thickness);
  return {
    kind: 'film-coefficients',
    version: 1,
    ...solve(film.reading, film.substrate, film.opaqueReflectance, film.thickness, ''),
    warnings: [],
  };
}

/**
 * K and S of a film at each wavelength: {@link filmCoefficientsFromReflectivity} throughout.
 *
 * @param film - spectra of the reading, the substrate and an opaque layer, and the thickness
 * @returns K and S per unit of thickness at each wavelength, and R infinity as given
 * @throws TintladderError `grid-mismatch`; others as {@link filmCoefficientsFromReflectivity}, with the wavelength
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * const film = { reading: flat(0.5), substrate: flat(0), opaqueReflectance: flat(1), thickness: 4 };
 * filmCoefficientSpectraFromReflectivity(film).scattering[0] // 0.25
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function filmCoefficientSpectraFromReflectivity(film: FilmAndReflectivitySpectra): FilmCoefficientSpectra {
  assertObject(film, 'film', 'the spectra of a film');
  const { thickness } = film;
  const [reading, substrate, opaqueReflectance] = (['reading', 'substrate', 'opaqueReflectance'] as const).map((name) =>
    asSpectrum(film[name], name),
  );
  assertThickness(thickness);
  for (const [path, other] of Object.entries({ substrate, opaqueReflectance })) assertSameGrid(reading, other, path);
  const { start, step, values } = reading;
  const found = Array.from(values, (R, i) =>
    solve(R, substrate.values[i], opaqueReflectance.values[i], thickness, ` at ${start + i * step} nm`),
  );
  const reflectivity = opaqueSpectrum(reading, found);
  return {
    kind: 'film-coefficient-spectra',
    version: 1,
    absorption: found.map(({ absorption }) => absorption),
    scattering: found.map(({ scattering }) => scattering),
    ...(reflectivity && { opaqueReflectance: reflectivity }),
    warnings: [],
  };
}

/** With ρ = R infinity: exp(2bSX) = 1 + q, q = (Rg - R)(1 - ρ²) / ((1 - ρ Rg)(R - ρ)), and b = (1 - ρ²) / 2ρ. */
function solve(R: number, Rg: number, ρ: number, X: number, where: string) {
  assertInternal(R, `reading${where}`);
  assertInternal(Rg, `substrate${where}`);
  assertInternal(ρ, `opaqueReflectance${where}`);
  if (Rg === ρ) {
    throw new TintladderError('no-solution', {
      path: `substrate${where}`,
      received: Rg,
      expected: `a substrate whose reflectance differs from the opaque layer's (${ρ})`,
    });
  }
  if (R === ρ) {
    throw new TintladderError('film-opaque', {
      path: `film${where}`,
      received: R,
      expected: 'a reading that differs from the opaque layer',
      hint: 'Use a thinner film.',
    });
  }
  const ratio = (Rg - R) / (R - ρ);
  if (ratio < 0) {
    throw new TintladderError('no-solution', {
      path: `reading${where}`,
      received: R,
      expected: `a reflectance between the substrate (${Rg}) and the opaque layer (${ρ})`,
    });
  }
  const perUnit = ratio / (1 - ρ + ρ * (1 - Rg));
  const q = perUnit * (1 - ρ) * (1 + ρ);
  const share = (perUnit * (q === 0 ? 1 : Math.log1p(q) / q)) / X;
  return { absorption: (share * (1 - ρ) * (1 - ρ)) / 2, scattering: share * ρ, opaqueReflectance: ρ };
}
