import { createSpectrum, deltaEab, labFromSpectrum, type Spectrum, type Viewing } from '../colorimetry/index.js';
import { meanRow } from '../numeric/internal.js';
import type { Area } from './area.js';
import { type RubOutPrecision, varianceOfDifference } from './precision.js';
import type { SpectralChange } from './spectral-change.js';
import { dot, estimateNoise, largerNoise, type NoiseTerm, type SpectralNoise, scaleNoise } from './spectral-noise.js';

/** How readings lie about the means that they are averaged into. */
export interface Deviations {
  readonly residuals: readonly Float64Array[];
  readonly degreesOfFreedom: number;
  /** How many times the variance behind them goes into that of the mean difference. */
  readonly share: number;
}

/**
 * What was repeated shows of the scatter of a difference: spots about the mean of their film, and differences of drawdowns about their mean.
 *
 * @param rows - of each area, one row for each reading
 */
export function deviationsOf(
  areas: readonly [Area, Area],
  rows: readonly [readonly Float64Array[], readonly Float64Array[]],
): Deviations[] {
  const found: Deviations[] = [];
  const n = areas[0].units.length;
  const films = areas.flatMap(({ units }, side) => units.map((unit) => unit.map((i) => rows[side][i])));
  const spots = films.reduce((sum, film) => sum + film.length - 1, 0);
  const share = films.reduce((sum, film) => sum + 1 / film.length, 0) / (n * n);
  if (spots > 0) found.push({ residuals: films.flatMap(aboutMean), degreesOfFreedom: spots, share });
  if (n > 1) {
    const differences = areas[0].units.map((_, k) => {
      const [before, after] = [meanRow(films[k]), meanRow(films[n + k])];
      return after.map((value, i) => value - before[i]);
    });
    found.push({ residuals: aboutMean(differences), degreesOfFreedom: n - 1, share: 1 / n });
  }
  return found.filter(({ residuals }) => residuals.some((row) => row.some((value) => Math.abs(value) > ROUNDING)));
}

/** Scatter of a reflectance below this is rounding. */
const ROUNDING = 1e-12;

function aboutMean(rows: readonly Float64Array[]): Float64Array[] {
  if (rows.length < 2) return [];
  const centre = meanRow(rows);
  return rows.map((row) => row.map((value, i) => value - centre[i]));
}

/** How a stated precision is divided: offset, gain, tilt and strength of a film alike; each wavelength by itself has this share of a term. */
const BANDS = 0.3;
/** Over how many directions the rest is spread where nothing shows it: smooth curves of which nothing is known. */
const SMOOTH = 3;
/** Degrees of freedom of a precision that states none: a history is never exact. */
const USUAL_HISTORY = 30;

/** The noise of the mean change of a spectrum; undefined where nothing shows it. */
export function changeNoise(
  areas: readonly [Area, Area],
  spectra: readonly [readonly Spectrum[], readonly Spectrum[]],
  found: SpectralChange,
  { precision, viewing }: { readonly precision?: RubOutPrecision | undefined; readonly viewing: Viewing },
): SpectralNoise | undefined {
  const shapes = shapesOf(found);
  const rowsOf = (list: readonly Spectrum[]) =>
    list.map(({ values }) => Float64Array.from(found.bands, (band) => values[band]));
  const estimates = deviationsOf(areas, [rowsOf(spectra[0]), rowsOf(spectra[1])]).map(
    ({ residuals, degreesOfFreedom, share }) => scaleNoise(estimateNoise(residuals, degreesOfFreedom, shapes), share),
  );
  if (precision) estimates.push(ofPrecision(areas, spectra[0][0], found, shapes, precision, viewing));
  return estimates.length > 0 ? estimates.reduce(largerNoise) : undefined;
}

/** Zero of the instrument, its scale, its slope over the wavelengths, and the strength of a spot of the film. */
function shapesOf({ reflectance, wavelengths, slope, ratio }: SpectralChange): Float64Array[] {
  const middle = (wavelengths[0] + wavelengths[wavelengths.length - 1]) / 2;
  return [
    reflectance.map(() => 1),
    reflectance.map((R) => R),
    reflectance.map((R, i) => (R * (wavelengths[i] - middle)) / 150),
    reflectance.map((_, i) => slope[i] * ratio[i]),
  ];
}

function ofPrecision(
  areas: readonly [Area, Area],
  { start, step, values }: Spectrum,
  { bands }: SpectralChange,
  shapes: readonly Float64Array[],
  precision: RubOutPrecision,
  viewing: Viewing,
): SpectralNoise {
  const counts = areas[0].units.map((unit, k) => [unit.length, areas[1].units[k].length] as const);
  const { variance } = varianceOfDifference(counts, precision);
  const degreesOfFreedom = precision.degreesOfFreedom ?? USUAL_HISTORY;
  const labOf = (list: Float64Array) =>
    labFromSpectrum(createSpectrum({ start, step, values: list, scale: 'fraction' }), viewing);
  const from = labOf(values);
  const terms = shapes.map((shape): NoiseTerm => {
    const size = Math.sqrt(dot(shape, shape) / shape.length);
    const nudge = 1e-4 / size;
    const moved = Float64Array.from(values);
    bands.forEach((band, i) => {
      moved[band] = Math.max(moved[band] + nudge * shape[i], 0);
    });
    // Four terms in place of three directions.
    const perUnit = Math.max(deltaEab(from, labOf(moved)) / nudge, 1e-3);
    return { shape, variance: (0.75 * variance) / perUnit ** 2, degreesOfFreedom };
  });
  const level = terms.reduce((sum, term) => sum + term.variance * (dot(term.shape, term.shape) / bands.length), 0);
  return { terms, bands: (BANDS ** 2 * level) / terms.length, directions: SMOOTH, degreesOfFreedom };
}
