import { difference, multiply, product, subtract } from '../numeric/internal.js';
import { filmReflectance } from './film.js';

/** Internal reflectances of one film at one wavelength: over black, over white, and of the two substrates. */
export interface FilmReadings {
  readonly overBlack: number;
  readonly overWhite: number;
  readonly black: number;
  readonly white: number;
}

/** What two readings say of a film without any further judgement; products with the thickness. */
export interface FilmOptics {
  /** K X */
  readonly kx: number;
  /** S X */
  readonly sx: number;
  /** K/S = kNumerator / sNumerator; both are linear in each reading and well conditioned even where the film hides */
  readonly kNumerator: number;
  readonly sNumerator: number;
}

/**
 * KX and SX of a film whose reading over white is the higher one. The two readings give K/S = k / s and, with
 * D = 4 (W - B)(Rw - Rb)(1 - W Rb)(1 - B Rw), sinh² bSX = k (k + 2 s) / D; only k and s are differences, and these are formed without
 * rounding.
 *
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457: two readings are two linear equations in a and b coth bSX
 */
export function filmOptics({ overBlack: Rb, overWhite: Rw, black: B, white: W }: FilmReadings): FilmOptics {
  const { kNumerator, sNumerator } = filmRatio({ overBlack: Rb, overWhite: Rw, black: B, white: W });
  const through = (1 - W + W * (1 - Rb)) * (1 - B + B * (1 - Rw));
  const rootD = 2 * Math.sqrt(W - B) * Math.sqrt(Rw - Rb) * Math.sqrt(through);
  const w = Math.sqrt(Math.max(kNumerator * (kNumerator + 2 * sNumerator), 0)) / rootD;
  const share = (w === 0 ? 1 : Math.asinh(w) / w) / rootD;
  return { kx: kNumerator * share, sx: sNumerator * share, kNumerator, sNumerator };
}

/** K/S of a film as numerator and denominator. */
export function filmRatio({ overBlack: Rb, overWhite: Rw, black: B, white: W }: FilmReadings) {
  const sNumerator = 2 * subtract(product(W, Rb), product(B, Rw));
  const kNumerator = subtract(
    multiply(multiply(difference(1, Rb), difference(1, Rw)), difference(W, B)),
    multiply(multiply(difference(1, B), difference(1, W)), difference(Rw, Rb)),
  );
  return { kNumerator, sNumerator };
}

/** R infinity from K/S as numerator and denominator, neither of them below 0 and not both 0. */
export function opaqueFromRatio(kNumerator: number, sNumerator: number): number {
  const root = Math.sqrt(kNumerator * (kNumerator + 2 * sNumerator));
  return sNumerator / (sNumerator + kNumerator + root);
}

/**
 * The film nearest to readings that ask for a negative absorption or scattering: the negative one is 0, and the other follows from one of
 * the readings.
 */
export function nearestFilm(
  readings: FilmReadings,
  { kNumerator, sNumerator }: FilmOptics,
): { kx: number; sx: number } {
  const { overBlack: Rb, overWhite: Rw, black: B, white: W } = readings;
  return {
    kx: sNumerator < 0 && kNumerator >= 0 ? Math.log(W / Rw) / 2 : 0,
    sx: sNumerator < 0 ? 0 : Math.max(0, (Rb - B) / ((1 - Rb) * (1 - B))),
  };
}

/** By how much a film misses its readings, the larger of the two. */
export function filmMiss({ kx, sx }: { kx: number; sx: number }, readings: FilmReadings): number {
  const film = { absorption: kx, scattering: sx, thickness: 1 };
  const { overBlack, overWhite, black, white } = readings;
  return Math.max(
    Math.abs(filmReflectance({ ...film, substrate: black }) - overBlack),
    Math.abs(filmReflectance({ ...film, substrate: white }) - overWhite),
  );
}
