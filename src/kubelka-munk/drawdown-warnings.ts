import type { Warning } from '../core/index.js';
import type { ChartDrawdown } from './chart-drawdown.js';
import type { FilmBand } from './film-band.js';
import { fluorescentBands } from './fluorescence.js';
import { wavelengthRuns } from './wavelength-runs.js';

/** A reading over black that is the higher one by more than this is no noise (our own rule, no source). */
const REVERSED = 0.01;

/** What a reader of a film must know: one warning for each kind, with its wavelengths. */
export function drawdownWarnings(drawdown: ChartDrawdown, bands: readonly FilmBand[], noise: number): Warning[] {
  const { overBlack, overWhite, black } = drawdown;
  const of = (has: (band: FilmBand, index: number) => boolean) => bands.filter(has).map(({ wavelength }) => wavelength);
  const note = (code: Warning['code'], wavelengths: readonly number[], say: (where: string) => string): Warning[] => {
    if (wavelengths.length === 0) return [];
    const path = wavelengthRuns(wavelengths, overBlack.step);
    return [{ code, message: say(path), path, figures: { wavelengths } }];
  };
  return [
    ...note(
      'readings-reversed',
      of((_, i) => overBlack.values[i] - overWhite.values[i] > REVERSED),
      (where) =>
        `The film reads higher over black than over white at ${where}: are the two readings exchanged, or is the film uneven?`,
    ),
    ...note(
      'readings-impossible',
      of(({ state }) => state === 'impossible'),
      (where) =>
        `No film with this surface on this chart gives the readings at ${where}: is k1 too high, or was the specular reflection excluded? Nothing is said of the film there.`,
    ),
    ...note(
      'substrate-unknown',
      of(({ state }) => state === 'substrate-unknown'),
      (where) =>
        `The chart shows through at ${where} and its bare fields were not read: R∞ lies between the two readings there if the chart is darker than it in the black field and lighter in the white one; K and S are not known.`,
    ),
    ...note(
      'film-hides',
      of(({ state }) => state === 'hiding'),
      (where) =>
        `The film hides the chart within the noise at ${where}: K/S is known there, of K and S only a lower bound${black ? '' : ' of 0'}.`,
    ),
    ...note(
      'fluorescence',
      fluorescentBands(drawdown, noise).map((i) => bands[i].wavelength),
      (where) =>
        `The film sends back light at ${where} that it can't have reflected, as a dye that fluoresces does: readings above 1, or a hump over black that is none over white. K, S and K/S hold for the lamp of the instrument only.`,
    ),
    ...(['absorption', 'scattering'] as const).flatMap((quantity) =>
      note(
        `negative-${quantity}`,
        of(({ negative }) => negative === quantity),
        (where) => `The readings ask for a negative ${quantity} at ${where}, which no film has; it is taken as 0.`,
      ),
    ),
  ];
}
