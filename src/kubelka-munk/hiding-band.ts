import { boundedFigure } from './bounded-figure.js';
import { filmOptics } from './film-optics.js';
import type { BandConditions, MeasuredBand } from './measured-band.js';
import { opaqueFigures } from './opaque-figures.js';

/**
 * A band at which the film hides within the noise. R∞ is the mean of the two readings; its bounds hold the noise of a mean and half of the
 * difference between the readings. K and S are at least those of a film that would show as much of its substrate as the noise could conceal.
 */
export function hidingBand(
  { overBlack, overWhite, substrates }: MeasuredBand,
  { noise, thickness }: BandConditions,
  toInternal: (measured: number) => number,
) {
  const mean = (overBlack + overWhite) / 2;
  const half = Math.SQRT2 * noise + Math.abs(overWhite - overBlack) / 2;
  const figures = opaqueFigures(toInternal(mean), toInternal(mean - half), toInternal(mean + half));
  const unknown = boundedFigure(undefined, 0, Infinity);
  if (!substrates) return { ...figures, absorption: unknown, scattering: unknown };
  const concealed = Math.max(overWhite - overBlack, 0) / 2 + Math.SQRT2 * noise;
  const readings = {
    overBlack: toInternal(mean - concealed),
    overWhite: toInternal(mean + concealed),
    black: toInternal(substrates.black),
    white: toInternal(substrates.white),
  };
  if (!(readings.white > readings.black)) return { ...figures, absorption: unknown, scattering: unknown };
  const { kx, sx } = filmOptics(readings);
  return {
    ...figures,
    absorption: boundedFigure(undefined, Math.max(0, kx) / thickness, Infinity),
    scattering: boundedFigure(undefined, Math.max(0, sx) / thickness, Infinity),
  };
}
