import type { BoundedFigure } from './bounded-figure.js';
import { hidingBand } from './hiding-band.js';
import type { BandConditions, MeasuredBand } from './measured-band.js';
import { opaqueFigures } from './opaque-figures.js';
import { internalOf } from './saunderson.js';
import { translucentBand } from './translucent-band.js';

/**
 * What a drawdown tells at one wavelength.
 *
 * - `translucent`: the substrate shows through, and its fields were read: R∞, K/S, K and S are known
 * - `hiding`: the two readings differ by no more than twice their noise: R∞ and K/S are known, of K and S a lower bound
 * - `substrate-unknown`: the substrate shows through and was not read: R∞ lies between the readings as long as it lies between the
 *   fields of the chart, which that of a white paint may not; of K and S nothing is known
 * - `impossible`: readings that no film with this surface on this substrate can give
 *
 * @example FILM_BAND_STATES.length // 4
 */
export const FILM_BAND_STATES = Object.freeze(['translucent', 'hiding', 'substrate-unknown', 'impossible'] as const);

/** One of {@link FILM_BAND_STATES}. */
export type FilmBandState = (typeof FILM_BAND_STATES)[number];

/** A film at one wavelength. */
export interface FilmBand {
  /** nm */
  readonly wavelength: number;
  readonly state: FilmBandState;
  /** R∞: internal reflectance of a layer through which nothing shows */
  readonly opaqueReflectance: BoundedFigure;
  readonly kOverS: BoundedFigure;
  /** K, per µm where the thickness is known, otherwise of the whole film */
  readonly absorption: BoundedFigure;
  /** S, in the unit of K */
  readonly scattering: BoundedFigure;
  /** Which of K and S came out below zero and was taken as 0 */
  readonly negative?: 'absorption' | 'scattering';
}

/** Evaluates one wavelength of a drawdown. Bounds are those of 95 %: a reading is moved by twice its noise. */
export function filmBand(wavelength: number, measured: MeasuredBand, conditions: BandConditions): FilmBand {
  const { overBlack, overWhite, substrates } = measured;
  const reach = 2 * conditions.noise;
  const internal = (value: number) => internalOf(value, conditions.surface);
  const nothing = { opaqueReflectance: {}, kOverS: {}, absorption: {}, scattering: {} };
  const all = [overBlack, overWhite, ...(substrates ? [substrates.black, substrates.white] : [])];
  if (all.some((value) => !(internal(value + reach) > 0 && internal(value - reach) < 1))) {
    return { wavelength, state: 'impossible', ...nothing };
  }
  const toInternal = (value: number) => Math.min(Math.max(internal(value), 0), 1);
  if (overWhite - overBlack <= reach) {
    return { wavelength, state: 'hiding', ...hidingBand(measured, conditions, toInternal) };
  }
  if (!substrates) {
    const [low, high] = [toInternal(overBlack - reach), toInternal(overWhite + reach)];
    const figures = opaqueFigures(undefined, low, high);
    return { wavelength, state: 'substrate-unknown', ...nothing, ...figures };
  }
  const found = translucentBand({ overBlack, overWhite, ...substrates }, conditions, toInternal);
  return found ? { wavelength, state: 'translucent', ...found } : { wavelength, state: 'impossible', ...nothing };
}
