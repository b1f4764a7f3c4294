import { createSpectrum, gridOf, type Spectrum } from '../colorimetry/index.js';
import { asSpectrum } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertNumberList, assertObject } from '../core/internal.js';

/** A film on a substrate in optical contact, at one wavelength. */
export interface Film {
  /** K, absorption coefficient, per unit of thickness, >= 0 */
  readonly absorption: number;
  /** S, scattering coefficient, per unit of thickness, >= 0 */
  readonly scattering: number;
  /** X, in the unit that K and S are per; >= 0, Infinity for an opaque layer */
  readonly thickness: number;
  /** Rg, internal reflectance of the substrate, 0 to 1 */
  readonly substrate: number;
}

/** A film on a substrate over a wavelength grid: that of the substrate. */
export interface FilmSpectra {
  /** K at each wavelength of the substrate, per unit of thickness, >= 0 */
  readonly absorption: ArrayLike<number>;
  /** S at each wavelength of the substrate, per unit of thickness, >= 0 */
  readonly scattering: ArrayLike<number>;
  /** X, in the unit that K and S are per; >= 0, Infinity for an opaque layer */
  readonly thickness: number;
  /** Internal reflectance of the substrate, 0 to 1 */
  readonly substrate: Spectrum;
}

/**
 * Reflectance of a film over a substrate (Kubelka-Munk), for any film: clear, purely absorbing, purely scattering, opaque.
 *
 * All reflectances are internal ones: the reflection at the surface is corrected before and after. The value is within a few
 * units of the last digit of exact arithmetic everywhere.
 *
 * @param film - K and S per unit of thickness, thickness, and reflectance of the substrate
 * @returns internal reflectance, 0 to 1
 * @throws TintladderError `out-of-range` for a negative or non-finite K or S or a negative thickness;
 * `reflectance-out-of-range` for a substrate outside 0 to 1
 * @example filmReflectance({ absorption: 0, scattering: 0.25, thickness: 4, substrate: 0 }) // 0.5
 * @example filmReflectance({ absorption: 0.1, scattering: 0.25, thickness: Infinity, substrate: 0.8 }) // 0.420204
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457, equation for R with a substrate
 */
export function filmReflectance(film: Film): number {
  assertObject(film, 'film', 'a film');
  assertFilm(film);
  return kernel(film.absorption, film.scattering, film.thickness, film.substrate);
}

/**
 * Reflectance spectrum of a film over a substrate: {@link filmReflectance} at every wavelength.
 *
 * @param film - K and S on the grid of the substrate, thickness, and the substrate's internal reflectance
 * @returns internal reflectance on the grid of the substrate
 * @throws TintladderError `wrong-length` if K or S has another number of values than the substrate; `out-of-range` and
 * `reflectance-out-of-range` as {@link filmReflectance}, with the wavelength
 * @example
 * const substrate = createSpectrum({ start: 400, step: 10, values: [0, 0.8], scale: 'fraction' });
 * filmSpectrum({ absorption: [0, 0], scattering: [0.25, 0.25], thickness: 4, substrate }).values[0] // 0.5
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function filmSpectrum(film: FilmSpectra): Spectrum {
  assertObject(film, 'film', 'a film');
  const { absorption, scattering, thickness } = film;
  const substrate = asSpectrum(film.substrate, 'film.substrate');
  const { start, step, count } = gridOf(substrate);
  assertBands({ absorption, scattering }, count);
  const values = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const film = { absorption: absorption[i], scattering: scattering[i], thickness, substrate: substrate.values[i] };
    assertFilm(film, start + i * step);
    values[i] = kernel(film.absorption, film.scattering, thickness, film.substrate);
  }
  return createSpectrum({ start, step, values, scale: 'fraction' });
}

/**
 * Refuses coefficients that don't have one value for each wavelength.
 *
 * @throws TintladderError `wrong-length`
 */
export function assertBands(coefficients: Readonly<Record<string, ArrayLike<number>>>, count: number): void {
  for (const [path, values] of Object.entries(coefficients)) {
    assertNumberList(values, path);
    if (values.length === count) continue;
    throw new TintladderError('wrong-length', {
      path: `length of ${path}`,
      received: values.length,
      expected: `one value for each wavelength of the substrate, ${count}`,
    });
  }
}

function assertFilm({ absorption, scattering, thickness, substrate }: Film, wavelength?: number): void {
  assertCoefficient(absorption, 'absorption', wavelength);
  assertCoefficient(scattering, 'scattering', wavelength);
  if (!(typeof thickness === 'number' && thickness >= 0)) {
    throw new TintladderError('out-of-range', {
      path: 'thickness',
      received: thickness,
      expected: 'a thickness of 0 or more',
    });
  }
  assertInternal(substrate, 'substrate', wavelength);
}

function assertCoefficient(value: number, name: string, wavelength?: number): void {
  if (typeof value === 'number' && value >= 0 && value < Infinity) return;
  throw new TintladderError('out-of-range', {
    path: placeOf(name, wavelength),
    received: value,
    expected: 'a finite coefficient of 0 or more',
  });
}

/**
 * Refuses a reflectance that no Kubelka-Munk layer can have.
 *
 * @throws TintladderError `reflectance-out-of-range`
 */
export function assertInternal(reflectance: number, name: string, wavelength?: number): void {
  if (typeof reflectance === 'number' && reflectance >= 0 && reflectance <= 1) return;
  throw new TintladderError('reflectance-out-of-range', {
    path: placeOf(name, wavelength),
    received: reflectance,
    expected: 'an internal reflectance from 0 to 1',
  });
}

/** Put together for a fault only: films are computed by the thousand. */
function placeOf(name: string, wavelength?: number): string {
  return wavelength === undefined ? name : `${name} at ${wavelength} nm`;
}

/**
 * The hyperbolic solution, divided through so that every term is positive and none cancels:
 *
 *   R = (S t (1 - Rg) + Rg (1 - K t)) / (1 + K t + S t (1 - Rg)),  t = tanh(αX) / α,  α = sqrt(K (K + 2 S)),
 *
 * with K t = κ tanh(αX), κ = sqrt(K / (K + 2 S)), and 1 - K t = (1 - κ) + κ (1 - tanh αX). As α -> 0, t -> X.
 */
function kernel(K: number, S: number, X: number, Rg: number): number {
  // Only the products with X count; the larger coefficient becomes the unit, so that nothing overflows.
  const unit = Math.max(K, S);
  const x = unit === 0 ? 0 : unit * X;
  if (x === 0) return Rg;
  const k = K / unit;
  const s = S / unit;
  const κ = Math.sqrt(k / (k + 2 * s));
  const α = Math.sqrt(k) * Math.sqrt(k + 2 * s);
  const u = α === 0 ? 0 : α * x;
  const t = u === 0 ? x : Math.tanh(u) / α;
  const E = Math.exp(-2 * u);
  const kt = κ * Math.tanh(u);
  const oneLessKt = (2 * s) / (k + 2 * s) / (1 + κ) + (κ * 2 * E) / (1 + E);
  const st = Rg === 1 ? 0 : s * t * (1 - Rg);
  // Scattering without end and without absorption returns all light.
  if (st === Infinity) return 1;
  // No film returns more than all light; only the last rounding could.
  return Math.min((st + Rg * oneLessKt) / (1 + kt + st), 1);
}
