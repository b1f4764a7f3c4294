import { createSpectrum, type Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';

/** Reflection at the boundary between air and film. */
export interface Surface {
  /** k1: share of the light that the surface reflects from outside, 0 <= k1 < 1; see {@link externalReflection}. */
  readonly external: number;
  /** k2: share of the diffuse light inside the film that the surface throws back, 0 <= k2 < 1. */
  readonly internal: number;
  /** Whether the instrument read the specular reflection with the rest. */
  readonly specular: 'included' | 'excluded';
}

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
 * @param surface - k1, k2 and whether specular reflection was included
 * @returns internal reflectance, of the same kind; above 1 only where the measured value exceeds what a film can reflect
 * @throws TintladderError `no-internal-reflectance` for a value at or below k1 with specular included, naming the
 * wavelength where a spectrum is given; `reflectance-out-of-range` for a negative value; `not-finite`; `invalid-option`
 * for k1 or k2 outside 0 to 1 or an unknown specular mode
 * @example internalReflectance(0.5, { external: 0.04, internal: 0.6, specular: 'included' }) // 0.69697
 * @example internalReflectance(0.46, { external: 0.04, internal: 0.6, specular: 'excluded' }) // 0.69697
 * @example internalReflectance(0.04, { external: 0.04, internal: 0.6, specular: 'included' }) // throws no-internal-reflectance
 * @see Saunderson (1942), J. Opt. Soc. Am. 32; ISO 18314-2
 */
export function internalReflectance(measured: number, surface: Surface): number;
/** The same at every wavelength of a spectrum. */
export function internalReflectance(measured: Spectrum, surface: Surface): Spectrum;
export function internalReflectance(measured: number | Spectrum, surface: Surface): number | Spectrum {
  assertSurface(surface);
  return each(measured, 'measured reflectance', (value, path) => {
    assertReflectance(value, path);
    const internal = internalOf(value, surface);
    if (surface.specular === 'included' && !(internal > 0)) throw noInternalReflectance(value, surface, path);
    return internal;
  });
}

/**
 * Measured reflectance from the one inside the film: the inverse of {@link internalReflectance}.
 *
 * @param internal - internal reflectance, a fraction or a whole spectrum
 * @param surface - k1, k2 and whether specular reflection is included
 * @returns measured reflectance, of the same kind
 * @throws TintladderError `reflectance-out-of-range` for a value below 0 or at or above 1/k2; `not-finite`;
 * `invalid-option` for k1 or k2 outside 0 to 1 or an unknown specular mode
 * @example measuredReflectance(1, { external: 0.04, internal: 0.6, specular: 'excluded' }) // 0.96
 * @see Saunderson (1942), J. Opt. Soc. Am. 32; ISO 18314-2
 */
export function measuredReflectance(internal: number, surface: Surface): number;
/** The same at every wavelength of a spectrum. */
export function measuredReflectance(internal: Spectrum, surface: Surface): Spectrum;
export function measuredReflectance(internal: number | Spectrum, surface: Surface): number | Spectrum {
  assertSurface(surface);
  return each(internal, 'internal reflectance', (value, path) => {
    assertReflectance(value, path);
    const measured = measuredOf(value, surface);
    if (!(measured >= 0 && measured < Infinity)) {
      const expected = `a fraction below 1/k2, ${1 / surface.internal},`;
      throw new TintladderError('reflectance-out-of-range', { path, received: value, expected });
    }
    return measured;
  });
}

/**
 * Refuses a surface that no film can have.
 *
 * @throws TintladderError `invalid-option`
 */
export function assertSurface({ external, internal, specular }: Surface): void {
  for (const [name, value] of Object.entries({ external, internal })) {
    if (!(value >= 0 && value < 1)) {
      const expected = 'a fraction from 0 to below 1';
      throw new TintladderError('invalid-option', { path: `surface.${name}`, received: value, expected });
    }
  }
  if (specular !== 'included' && specular !== 'excluded') {
    const expected = "'included' or 'excluded'";
    throw new TintladderError('invalid-option', { path: 'surface.specular', received: specular, expected });
  }
}

/**
 * Saunderson's correction without any check. With d the light that came from inside, both specular modes read
 * `d / ((1 - k1)(1 - k2) + k2 d)`: a sum of positive terms, which keeps every digit.
 */
export function internalOf(measured: number, { external, internal, specular }: Surface): number {
  const fromInside = specular === 'included' ? measured - external : measured;
  return fromInside / ((1 - external) * (1 - internal) + internal * fromInside);
}

/** The way back without any check; `1 - k2 R` is written as a sum, since its difference loses digits where k2 R is near 1. */
export function measuredOf(reflectance: number, { external, internal, specular }: Surface): number {
  const fromInside = ((1 - external) * (1 - internal) * reflectance) / (1 - internal + internal * (1 - reflectance));
  return specular === 'included' ? external + fromInside : fromInside;
}

/** The fault of a reading that is no more than the surface alone reflects. */
export function noInternalReflectance(measured: number, surface: Surface, path: string): TintladderError {
  return new TintladderError('no-internal-reflectance', {
    path,
    received: measured,
    expected: `a value above the surface reflection k1, ${surface.external},`,
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
  if (typeof given !== 'object') return correct(given, name);
  const { start, step } = given;
  const values = given.values.map((value, i) => correct(value, `${name} at ${start + i * step} nm`));
  return createSpectrum({ start, step, values, scale: 'fraction' });
}
