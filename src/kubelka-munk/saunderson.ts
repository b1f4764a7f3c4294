import { createSpectrum, type Spectrum } from '../colorimetry/index.js';
import { asSpectrum } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertSurface, passedBySurface, type Surface, type SurfaceCorrection } from './surface.js';

/**
 * External surface reflection k1 of a smooth film in air from its refractive index: Fresnel at normal incidence.
 *
 * @param refractiveIndex - of the binder, 1 or more; about 1.5 for paint
 * @returns k1, a fraction
 * @throws TintladderError `out-of-range` below 1, `not-finite`
 * @example externalReflection(1.5) // 0.04
 * @see Fresnel's equations at normal incidence, k1 = ((n - 1) / (n + 1))²; Saunderson (1942), J. Opt. Soc. Am. 32
 */
export function externalReflection(refractiveIndex: number): number {
  const path = 'refractiveIndex';
  if (!Number.isFinite(refractiveIndex)) {
    throw new TintladderError('not-finite', { path, received: refractiveIndex, expected: 'a finite number' });
  }
  if (refractiveIndex < 1) {
    throw new TintladderError('out-of-range', { path, received: refractiveIndex, expected: 'an index of 1 or more' });
  }
  return ((refractiveIndex - 1) / (refractiveIndex + 1)) ** 2;
}

/**
 * Reflectance inside the film from the measured one: what Kubelka-Munk theory speaks of.
 *
 * @param measured - measured reflectance, a fraction or a whole spectrum
 * @param surface - k1, k2, whether specular reflection was included, and the geometry; `'none'` leaves the value as it is
 * @returns internal reflectance, of the same kind; above 1 only where the measured value exceeds what a film can reflect
 * @throws TintladderError `no-internal-reflectance` for a value at or below k1 with specular included, naming the
 * wavelength where a spectrum is given; `reflectance-out-of-range` for a negative value; `not-finite`; `invalid-option`
 * for k1 or k2 outside 0 to 1, an unknown specular mode or geometry, or 45° with the specular reflection included
 * @example internalReflectance(0.5, { external: 0.04, internal: 0.6, specular: 'included' }) // 0.69697
 * @example internalReflectance(0.46, { external: 0.04, internal: 0.6, specular: 'excluded' }) // 0.69697
 * @example internalReflectance(0.04, { external: 0.04, internal: 0.6, specular: 'included' }) // throws no-internal-reflectance
 * @see Saunderson (1942), J. Opt. Soc. Am. 32; ISO 18314-2 (surface correction by geometry)
 */
export function internalReflectance(measured: number, surface: SurfaceCorrection): number;
/** The same at every wavelength of a spectrum. */
export function internalReflectance(measured: Spectrum, surface: SurfaceCorrection): Spectrum;
export function internalReflectance(measured: number | Spectrum, surface: SurfaceCorrection): number | Spectrum {
  assertSurface(surface);
  return each(measured, 'measured reflectance', (value, path) => {
    assertReflectance(value, path);
    const internal = internalOf(value, surface);
    if (surface !== 'none' && surface.specular === 'included' && !(internal > 0)) {
      throw noInternalReflectance(value, surface, path);
    }
    return internal;
  });
}

/**
 * Measured reflectance from the one inside the film: the inverse of {@link internalReflectance}.
 *
 * @param internal - internal reflectance, a fraction or a whole spectrum
 * @param surface - k1, k2, whether specular reflection is included, and the geometry; `'none'` leaves the value as it is
 * @returns measured reflectance, of the same kind
 * @throws TintladderError `reflectance-out-of-range` for a value below 0 or at or above 1/k2; `not-finite`;
 * `invalid-option` for k1 or k2 outside 0 to 1, an unknown specular mode or geometry, or 45° with the specular reflection included
 * @example measuredReflectance(1, { external: 0.04, internal: 0.6, specular: 'excluded' }) // 0.96
 * @see Saunderson (1942), J. Opt. Soc. Am. 32; ISO 18314-2 (surface correction by geometry)
 */
export function measuredReflectance(internal: number, surface: SurfaceCorrection): number;
/** The same at every wavelength of a spectrum. */
export function measuredReflectance(internal: Spectrum, surface: SurfaceCorrection): Spectrum;
export function measuredReflectance(internal: number | Spectrum, surface: SurfaceCorrection): number | Spectrum {
  assertSurface(surface);
  return each(internal, 'internal reflectance', (value, path) => {
    assertReflectance(value, path);
    const measured = measuredOf(value, surface);
    if (!(measured >= 0 && measured < Infinity)) {
      const expected = surface === 'none' ? 'a fraction' : `a fraction below 1/k2, ${1 / surface.internal}`;
      throw new TintladderError('reflectance-out-of-range', { path, received: value, expected });
    }
    return measured;
  });
}

/**
 * Saunderson's correction without any check. With d the light that came from inside, every mode and geometry reads
 * `d / (passed + k2 d)`: a sum of positive terms, which keeps every digit.
 */
export function internalOf(measured: number, surface: SurfaceCorrection): number {
  if (surface === 'none') return measured;
  const fromInside = surface.specular === 'included' ? measured - surface.external : measured;
  return fromInside / (passedBySurface(surface) + surface.internal * fromInside);
}

/** The way back without any check; `1 - k2 R` is written as a sum, since its difference loses digits where k2 R is near 1. */
export function measuredOf(reflectance: number, surface: SurfaceCorrection): number {
  if (surface === 'none') return reflectance;
  const { external, internal, specular } = surface;
  const fromInside = (passedBySurface(surface) * reflectance) / (1 - internal + internal * (1 - reflectance));
  return specular === 'included' ? external + fromInside : fromInside;
}

/** The fault of a reading that is no more than the surface alone reflects. */
export function noInternalReflectance(measured: number, surface: Surface, path: string): TintladderError {
  return new TintladderError('no-internal-reflectance', {
    path,
    received: measured,
    expected: `a value above the surface reflection k1, ${surface.external}`,
    hint: 'Was the specular reflection excluded, or is k1 lower?',
  });
}

function assertReflectance(value: number, path: string): void {
  if (!Number.isFinite(value)) {
    throw new TintladderError('not-finite', { path, received: value, expected: 'a finite number' });
  }
  if (value < 0) {
    throw new TintladderError('reflectance-out-of-range', { path, received: value, expected: 'zero or more' });
  }
}

function each(
  given: number | Spectrum,
  name: string,
  correct: (value: number, path: string) => number,
): number | Spectrum {
  if (typeof given === 'number') return correct(given, name);
  const { start, step, values: read } = asSpectrum(given, name);
  const values = read.map((value, i) => correct(value, `${name} at ${start + i * step} nm`));
  return createSpectrum({ start, step, values, scale: 'fraction' });
}
