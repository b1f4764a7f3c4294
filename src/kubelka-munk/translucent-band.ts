import { type BoundedFigure, boundedFigure, boundsFromMoves } from './bounded-figure.js';
import { type FilmReadings, filmMiss, filmOptics, nearestFilm, opaqueFromRatio } from './film-optics.js';
import type { BandConditions } from './measured-band.js';
import { opaqueFigures } from './opaque-figures.js';

/** Readings that no film can give are forgiven up to this miss, about the accuracy of an instrument. */
const FORGIVEN = 0.01;
const ROUNDING = 1e-12;

/**
 * A band at which the substrate shows through, from four measured readings; nothing for readings that no film can give. The bounds come from
 * moving each reading on its own; those of K and S are found on a logarithmic scale, and are open upwards where noise could hide the film.
 */
export function translucentBand(
  measured: FilmReadings,
  { noise, thickness }: BandConditions,
  toInternal: (measured: number) => number,
) {
  const read = (moved: Partial<FilmReadings>) => {
    const { overBlack, overWhite, black, white } = { ...measured, ...moved };
    return filmOf({
      overBlack: toInternal(overBlack),
      overWhite: toInternal(overWhite),
      black: toInternal(black),
      white: toInternal(white),
    });
  };
  const found = read({});
  if (!(found.miss <= FORGIVEN)) return undefined;
  const moved = (['overBlack', 'overWhite', 'black', 'white'] as const).flatMap((name) =>
    [-2 * noise, 2 * noise].map((shift) => read({ [name]: measured[name] + shift })),
  );
  const opaque = boundsFromMoves(
    found.opaque,
    moved.map((film) => film.opaque),
  );
  const couldHide = measured.overWhite - measured.overBlack <= 2 * Math.SQRT2 * noise;
  const coefficient = (of: 'kx' | 'sx') => {
    const figures = [...moved.map((film) => film[of]), ...(couldHide ? [Infinity] : [])];
    return perThickness(found[of], figures, thickness);
  };
  return {
    ...(Number.isNaN(found.opaque)
      ? { opaqueReflectance: {}, kOverS: {} }
      : opaqueFigures(found.opaque, opaque.low, opaque.high)),
    absorption: coefficient('kx'),
    scattering: coefficient('sx'),
    ...(found.negative && { negative: found.negative }),
  };
}

interface PhysicalFilm {
  readonly kx: number;
  readonly sx: number;
  /** NaN for a clear film, which has none */
  readonly opaque: number;
  readonly miss: number;
  readonly negative?: 'absorption' | 'scattering';
}

/** The film of four internal reflectances, with K and S not below 0; endlessly deep where nothing shows through. */
function filmOf(readings: FilmReadings): PhysicalFilm {
  const { overBlack, overWhite, black, white } = readings;
  if (!(white > black)) return { kx: Number.NaN, sx: Number.NaN, opaque: Number.NaN, miss: Infinity };
  if (overWhite <= overBlack) return { kx: Infinity, sx: Infinity, opaque: (overBlack + overWhite) / 2, miss: 0 };
  const optics = filmOptics(readings);
  const { kNumerator, sNumerator } = optics;
  if (kNumerator >= 0 && sNumerator >= 0) {
    return { kx: optics.kx, sx: optics.sx, opaque: opaqueFromRatio(kNumerator, sNumerator), miss: 0 };
  }
  const nearest = nearestFilm(readings, optics);
  const miss = filmMiss(nearest, readings);
  return {
    ...nearest,
    opaque: opaqueFromRatio(nearest.kx, nearest.sx),
    miss,
    ...(miss > ROUNDING && { negative: kNumerator < 0 ? ('absorption' as const) : ('scattering' as const) }),
  };
}

function perThickness(value: number, moved: readonly number[], thickness: number): BoundedFigure {
  if (value === 0) {
    const { high } = boundsFromMoves(0, moved);
    return boundedFigure(0, 0, high / thickness);
  }
  const { low, high } = boundsFromMoves(Math.log(value), moved.map(Math.log));
  return boundedFigure(value / thickness, Math.exp(low) / thickness, Math.exp(high) / thickness);
}
