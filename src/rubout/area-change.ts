import { colourDifference, createSpectrum, type Lab, labFromSpectrum, type Spectrum } from '../colorimetry/index.js';
import { type Area, meanOfUnits, meanSpectrumOfUnits } from './area.js';
import { changeNoise, type Deviations, deviationsOf } from './change-noise.js';
import type { Settings } from './rub-out-options.js';
import type { MeasuredChange } from './rub-out-result.js';
import { type SpectralChange, spectralChange } from './spectral-change.js';
import type { SpectralNoise } from './spectral-noise.js';
import {
  type FittedStrength,
  labOfTristimulusRow,
  type RubOutStrengthChange,
  TRISTIMULUS_BANDS,
  tristimulusRow,
} from './strength-change.js';

/** Mean colours of both areas and, where they were read as spectra, the mean spectra. */
export interface Means {
  readonly from: Lab;
  readonly to: Lab;
  readonly spectra?: readonly [Spectrum, Spectrum];
}

/** Means over the drawdowns; of spectra the colour of the mean. */
export function meansOf(areas: readonly [Area, Area], { viewing }: Settings): Means {
  const [before, after] = areas;
  if (!before.spectra || !after.spectra) return { from: meanOfUnits(before), to: meanOfUnits(after) };
  const spectra = [meanSpectrumOfUnits(before, before.spectra), meanSpectrumOfUnits(after, after.spectra)] as const;
  return { from: labFromSpectrum(spectra[0], viewing), to: labFromSpectrum(spectra[1], viewing), spectra };
}

/** What rubbing changed, and how readings scatter about it. */
export interface Change {
  readonly spectral?: SpectralChange | undefined;
  readonly deviations: readonly Deviations[];
  readonly spectra?: Means['spectra'] | undefined;
}

/** The change of reflectance: over the spectrum, or of X, Y and Z over the white where only Lab values are at hand. */
export function changeOf(
  areas: readonly [Area, Area],
  white: Area | undefined,
  spectra: Means['spectra'],
  { viewing, surface }: Settings,
  labs: readonly [Lab, Lab],
): Change {
  const [before, after] = areas;
  if (spectra && before.spectra && after.spectra) {
    const { start, step } = spectra[0];
    const wavelengths = Array.from(spectra[0].values, (_, i) => start + i * step);
    const ofWhite = white?.spectra && meanSpectrumOfUnits(white, white.spectra).values;
    const rows = { wavelengths, unrubbed: spectra[0].values, rubbed: spectra[1].values, white: ofWhite };
    const spectral = spectralChange(rows, surface);
    const rowsOf = (list: readonly Spectrum[]) =>
      list.map(({ values }) => Float64Array.from(spectral?.bands ?? [], (band) => values[band]));
    return { spectral, spectra, deviations: deviationsOf(areas, [rowsOf(before.spectra), rowsOf(after.spectra)]) };
  }
  const rowOf = (lab: Lab) => tristimulusRow(lab, viewing);
  const ofWhite = white && rowOf(meanOfUnits(white));
  const rows = { wavelengths: TRISTIMULUS_BANDS, unrubbed: rowOf(labs[0]), rubbed: rowOf(labs[1]), white: ofWhite };
  const deviations = deviationsOf(areas, [before.labs.map(rowOf), after.labs.map(rowOf)]);
  return { spectral: spectralChange(rows, surface), deviations };
}

/** A fitted strength as a result tells it; undefined without one. */
export function strengthOf(
  fitted: FittedStrength | undefined,
  { spectral, spectra }: Change,
  to: Lab,
  { viewing }: Settings,
): RubOutStrengthChange | undefined {
  if (!fitted || !spectral) return undefined;
  const { change, interval, curve } = fitted;
  const { start, step, values } = spectra?.[0] ?? { start: 0, step: 0, values: spectral.reflectance };
  const matched = Float64Array.from(values);
  spectral.bands.forEach((band, i) => {
    matched[band] = Math.max(matched[band] + curve[i], 0);
  });
  const lab = spectra
    ? labFromSpectrum(createSpectrum({ start, step, values: matched, scale: 'fraction' }), viewing)
    : labOfTristimulusRow(matched, viewing);
  return {
    changePercent: 100 * change,
    ...(interval && { interval: { low: 100 * interval.low, high: 100 * interval.high } }),
    approximate: spectra === undefined,
    residualDEab: colourDifference(lab, to).dEab,
  };
}

/** The noise of the mean change, where spectra show it. */
export function noiseOf(areas: readonly [Area, Area], spectral: SpectralChange, { precision, viewing }: Settings) {
  const [{ spectra: before }, { spectra: after }] = areas;
  return before && after ? changeNoise(areas, [before, after], spectral, { precision, viewing }) : undefined;
}

/** The change as plain numbers, for charts. */
export function measuredChange(
  { wavelengths, change }: SpectralChange,
  noise: SpectralNoise | undefined,
): MeasuredChange {
  const deviation =
    noise &&
    Array.from(change, (_, i) =>
      Math.sqrt(noise.terms.reduce((sum, { shape, variance }) => sum + variance * shape[i] ** 2, noise.bands)),
    );
  return { wavelengths, change: Array.from(change), ...(deviation && { deviation }) };
}
