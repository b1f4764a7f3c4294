import { createSpectrum, type Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import { assertInternal } from './film.js';
import { filmMiss, filmOptics, nearestFilm, opaqueFromRatio } from './film-optics.js';

/** One film read over a black and over a white substrate, at one wavelength; internal reflectances, 0 to 1. */
export interface FilmPair {
  readonly overBlack: number;
  readonly overWhite: number;
  /** Reflectance of the black substrate itself */
  readonly black: number;
  /** Reflectance of the white substrate itself */
  readonly white: number;
  /** X, > 0; K and S come out per unit of it */
  readonly thickness: number;
}

/** Kubelka-Munk coefficients of a film at one wavelength. */
export interface FilmCoefficients {
  readonly kind: 'film-coefficients';
  readonly version: 1;
  /** K, per unit of thickness */
  readonly absorption: number;
  /** S, per unit of thickness */
  readonly scattering: number;
  /** R infinity, of a layer so thick that nothing shows through; absent for a film that neither absorbs nor scatters */
  readonly opaqueReflectance?: number;
  readonly warnings: readonly Warning[];
}

/** One film read over a black and over a white substrate; spectra of internal reflectance, all on one grid. */
export interface FilmPairSpectra {
  readonly overBlack: Spectrum;
  readonly overWhite: Spectrum;
  readonly black: Spectrum;
  readonly white: Spectrum;
  /** X, > 0 */
  readonly thickness: number;
}

/** Kubelka-Munk coefficients of a film at each wavelength of its spectra. */
export interface FilmCoefficientSpectra {
  readonly kind: 'film-coefficient-spectra';
  readonly version: 1;
  readonly absorption: readonly number[];
  readonly scattering: readonly number[];
  /** R infinity; absent if the film neither absorbs nor scatters at some wavelength */
  readonly opaqueReflectance?: Spectrum;
  readonly warnings: readonly Warning[];
}

/** Readings that no film can give are forgiven up to this miss, about the accuracy of an instrument. */
const FORGIVEN = 0.01;
/** Reading error, and the relative change of S it may cause before a film counts as nearly opaque. */
const READING_ERROR = 0.001;
const NOTABLE_CHANGE = 0.1;

/**
 * K and S of a film from its reflectance over black and over white: the inverse of {@link filmReflectance}.
 *
 * Exact to the last digits for the readings as given, but readings carry only so much: as the film hides, overWhite -
 * overBlack falls as exp(-2bSX), and an error of it passes into K and S as error / (2 bSX (overWhite - overBlack)). A film for
 * which an error of 0.001 moves S by more than 10 % is noted as `nearly-opaque`. Where noise asks for a K or S below zero, it
 * is taken as 0 if that film misses the readings by at most 0.01; a miss above 1e-12 is noted.
 *
 * @param pair - readings over both substrates, the substrates, and the thickness
 * @returns K and S per unit of thickness, R infinity, and warnings `nearly-opaque`, `negative-absorption`, `negative-scattering`
 * @throws TintladderError `film-opaque` if the reading over white is not the higher one; `no-solution` for readings that no film
 * gives; `reflectance-out-of-range`; `out-of-range` for a thickness that is not positive or substrates not in order
 * @example filmCoefficients({ overBlack: 0.5, overWhite: 6 / 7, black: 0, white: 5 / 6, thickness: 4 }).scattering // 0.25
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457: two readings are two linear equations in a and b coth bSX; ASTM D2805
 */
export function filmCoefficients(pair: FilmPair): FilmCoefficients {
  assertObject(pair, 'pair', 'the readings of a film');
  const { overBlack, overWhite, black, white, thickness } = pair;
  assertThickness(thickness);
  assertPair(overBlack, overWhite, black, white, '');
  if (overWhite <= overBlack) throw opaque('film', overBlack, overWhite);
  const { notes, ...found } = solve(overBlack, overWhite, black, white, thickness, '');
  return { kind: 'film-coefficients', version: 1, ...found, warnings: gather(notes) };
}

/**
 * K and S of a film at each wavelength, from its spectra over black and over white: {@link filmCoefficients} throughout.
 *
 * @param pair - spectra over both substrates, those of the substrates, and the thickness
 * @returns K and S per unit of thickness, R infinity, and warnings with their wavelengths
 * @throws TintladderError `grid-mismatch`; `film-opaque` naming every wavelength at which the film hides the substrate; others as
 * {@link filmCoefficients}, with the wavelength
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * const film = { overBlack: flat(0.5), overWhite: flat(6 / 7), black: flat(0), white: flat(5 / 6), thickness: 4 };
 * filmCoefficientSpectra(film).scattering[1] // 0.25
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function filmCoefficientSpectra(pair: FilmPairSpectra): FilmCoefficientSpectra {
  assertObject(pair, 'pair', 'the spectra of a film');
  const { thickness } = pair;
  const [overBlack, overWhite, black, white] = (['overBlack', 'overWhite', 'black', 'white'] as const).map((name) =>
    asSpectrum(pair[name], name),
  );
  assertThickness(thickness);
  for (const [path, spectrum] of Object.entries({ overWhite, black, white })) assertSameGrid(overBlack, spectrum, path);
  const { start, step, values } = overBlack;
  const at = (i: number) => `${start + i * step} nm`;
  const hidden: number[] = [];
  values.forEach((Rb, i) => {
    assertPair(Rb, overWhite.values[i], black.values[i], white.values[i], ` at ${at(i)}`);
    if (overWhite.values[i] <= Rb) hidden.push(i);
  });
  if (hidden.length > 0)
    throw opaque(`film at ${hidden.map(at).join(', ')}`, values[hidden[0]], overWhite.values[hidden[0]]);
  const found = Array.from(values, (Rb, i) =>
    solve(Rb, overWhite.values[i], black.values[i], white.values[i], thickness, at(i)),
  );
  const opaqueReflectance = opaqueSpectrum(overBlack, found);
  return {
    kind: 'film-coefficient-spectra',
    version: 1,
    absorption: found.map((film) => film.absorption),
    scattering: found.map((film) => film.scattering),
    ...(opaqueReflectance && { opaqueReflectance }),
    warnings: gather(found.flatMap((film) => film.notes)),
  };
}

/** R infinity at all wavelengths, if every film has one. */
export function opaqueSpectrum(
  { start, step }: Spectrum,
  films: readonly { readonly opaqueReflectance?: number }[],
): Spectrum | undefined {
  const values = films.flatMap(({ opaqueReflectance }) => opaqueReflectance ?? []);
  return values.length === films.length ? createSpectrum({ start, step, values, scale: 'fraction' }) : undefined;
}

/** Refuses a thickness by which nothing can be divided. */
export function assertThickness(thickness: number): void {
  if (typeof thickness === 'number' && thickness > 0 && thickness < Infinity) return;
  throw new TintladderError('out-of-range', {
    path: 'thickness',
    received: thickness,
    expected: 'a finite thickness above 0',
  });
}

function assertPair(overBlack: number, overWhite: number, black: number, white: number, where: string): void {
  for (const [name, value] of Object.entries({ overBlack, overWhite, black, white })) {
    assertInternal(value, `${name}${where}`);
  }
  if (white > black) return;
  throw new TintladderError('out-of-range', {
    path: `white${where}`,
    received: white,
    expected: `a substrate lighter than the black one (${black})`,
  });
}

function opaque(path: string, overBlack: number, overWhite: number): TintladderError {
  return new TintladderError('film-opaque', {
    path,
    received: { overBlack, overWhite },
    expected: 'a higher reading over white than over black',
    hint:
      overWhite < overBlack - FORGIVEN
        ? 'Are the two readings swapped?'
        : 'Use a thinner film, or the K/S of an opaque one.',
  });
}

interface Note {
  readonly code: 'nearly-opaque' | 'negative-absorption' | 'negative-scattering';
  readonly path: string;
  readonly size: number;
}

interface Solution {
  readonly absorption: number;
  readonly scattering: number;
  readonly opaqueReflectance?: number;
  readonly notes: readonly Note[];
}

function solve(Rb: number, Rw: number, B: number, W: number, X: number, path: string): Solution {
  const readings = { overBlack: Rb, overWhite: Rw, black: B, white: W };
  const optics = filmOptics(readings);
  let { kx, sx, kNumerator, sNumerator } = optics;
  const notes: Note[] = [];
  if (kNumerator < 0 || sNumerator < 0) {
    ({ kx, sx } = nearestFilm(readings, optics));
    const off = filmMiss({ kx, sx }, readings);
    if (off > FORGIVEN) {
      throw new TintladderError('no-solution', {
        path: `film${path && ` at ${path}`}`,
        received: { overBlack: Rb, overWhite: Rw, black: B, white: W },
        expected: 'a pair of readings that a film can give',
        hint: 'Are all four corrected for the surface, and do the substrates belong to this film?',
      });
    }
    if (off > 1e-12) {
      notes.push({ code: kNumerator < 0 ? 'negative-absorption' : 'negative-scattering', path, size: off });
    }
    kNumerator = Math.max(kNumerator, 0);
    sNumerator = Math.max(sNumerator, 0);
  }
  const shifted = Rw - READING_ERROR;
  const change = shifted > Rb ? Math.abs(filmOptics({ ...readings, overWhite: shifted }).sx / sx - 1) : Infinity;
  if (sx > 0 && !(change <= NOTABLE_CHANGE)) notes.push({ code: 'nearly-opaque', path, size: change });
  return {
    absorption: kx / X,
    scattering: sx / X,
    ...(kx + sx > 0 && { opaqueReflectance: opaqueFromRatio(kNumerator, sNumerator) }),
    notes,
  };
}

/** One warning for each kind of note, with all its wavelengths and the largest size. */
function gather(notes: readonly Note[]): Warning[] {
  return [...new Set(notes.map((note) => note.code))].map((code) => {
    const same = notes.filter((note) => note.code === code);
    const size = Math.max(...same.map((note) => note.size));
    const path = same.map((note) => note.path).join(', ');
    const quantity = code === 'negative-absorption' ? 'absorption' : 'scattering';
    const message =
      code === 'nearly-opaque'
        ? `The film nearly hides its substrate: an error of ${READING_ERROR} in a reading changes its scattering by ${
            size < 1 ? `${Math.round(100 * size)} %` : 'as much as itself or more'
          }.`
        : `The readings ask for a negative ${quantity}, which no film has; it is taken as 0, and such a film misses the readings by ${size.toPrecision(2)}.`;
    return path === '' ? { code, message } : { code, message, path };
  });
}
