import type { Interval } from '../decision/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { internalOf } from '../kubelka-munk/internal.js';
import { meanRow, studentQuantile } from '../numeric/internal.js';
import { layerOf } from './film-layer.js';

/** Measured rows over both fields, one for each spot. */
export interface ChartArea {
  readonly overBlack: readonly Float64Array[];
  readonly overWhite: readonly Float64Array[];
  readonly thickness?: number;
}

/** What the ratios are computed with. */
export interface ChartFields {
  readonly surface: SurfaceCorrection;
  readonly black: Float64Array;
  readonly white: Float64Array;
  /** Standard uncertainty of one thickness, as a share; left out where the thicknesses are not known. */
  readonly thicknessUncertainty?: number;
}

/** Ratios of the rubbed over the unrubbed area, and the bands that they come from. */
export interface CoefficientRatios {
  readonly absorption: { readonly value: number; readonly interval?: Interval };
  readonly scattering: { readonly value: number; readonly interval?: Interval };
  readonly bands: readonly number[];
}

/** Reflectance by which the fields of the chart must still differ through the film: below it S is noise. */
const SHOWS = 0.002;
/** A spot is moved by this share of its deviation for a derivative. */
const NUDGE = 0.05;
const MANY = 1e6;

type Means = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

/**
 * Ratios of K and of S between two areas, each a mean of logarithms over the bands that let the chart show through. A band weighs by the square
 * of what its readings tell: the fields seen through the film for S, these times the absorption for K.
 *
 * The interval follows each spot: how far the mean moves with the spot's deviation from its mean, all bands at once, so that errors common to all
 * wavelengths count as such. The uncertainty of both thicknesses is added; degrees of freedom by Satterthwaite.
 *
 * @returns undefined where no band shows the chart in both areas
 * @see JCGM 100:2008, 5.1 and G.4
 */
export function coefficientRatios(
  [unrubbed, rubbed]: readonly [ChartArea, ChartArea],
  fields: ChartFields,
): CoefficientRatios | undefined {
  const groups = [unrubbed.overBlack, unrubbed.overWhite, rubbed.overBlack, rubbed.overWhite];
  const means = groups.map(meanRow);
  const at: Means = [means[0], means[1], means[2], means[3]];
  const bands = Array.from(fields.black.keys()).filter((i) => logRatios(at, i, fields) !== undefined && showsAt(at, i));
  if (bands.length === 0) return undefined;
  const weights = weightsOf(at, bands, fields);
  const centre = weightedMean(at, bands, weights, fields);
  const { thicknessUncertainty } = fields;
  const thinner = Math.log((rubbed.thickness ?? 1) / (unrubbed.thickness ?? 1));
  const logOfThickness = thicknessUncertainty === undefined ? 0 : thinner;
  const variances = [0, 1].map((which) => {
    const parts = groups.flatMap((rows, g) => {
      if (rows.length < 2) return [];
      const squares = rows.reduce((sum, row) => {
        const moved = at.map((mean, k) => (k === g ? mean.map((value, i) => value + NUDGE * (row[i] - value)) : mean));
        const shifted = weightedMean([moved[0], moved[1], moved[2], moved[3]], bands, weights, fields);
        return sum + ((shifted[which] - centre[which]) / NUDGE) ** 2;
      }, 0);
      const degrees = rows.length - 1;
      return [{ variance: squares / (degrees * rows.length), degrees }];
    });
    if (parts.length === 0) return undefined;
    const ofThickness = 2 * (thicknessUncertainty ?? 0) ** 2;
    const total = parts.reduce((sum, { variance }) => sum + variance, ofThickness);
    const spread = parts.reduce((sum, { variance, degrees }) => sum + variance ** 2 / degrees, 0);
    return { total, degrees: spread > 0 ? Math.min((total * total) / spread, MANY) : MANY };
  });
  const [absorption, scattering] = centre.map((log, which) => {
    const value = log - logOfThickness;
    const found = variances[which];
    if (!found) return { value: Math.exp(value) };
    const half = studentQuantile(0.975, found.degrees) * Math.sqrt(found.total);
    return { value: Math.exp(value), interval: { low: Math.exp(value - half), high: Math.exp(value + half) } };
  });
  return { absorption, scattering, bands };
}

/** Whether the chart shows through both areas by more than noise. */
function showsAt([beforeBlack, beforeWhite, afterBlack, afterWhite]: Means, i: number): boolean {
  return beforeWhite[i] - beforeBlack[i] > SHOWS && afterWhite[i] - afterBlack[i] > SHOWS;
}

/** Logarithms of the ratios of K X and of S X at one band. */
function logRatios(means: Means, i: number, fields: ChartFields): readonly [number, number] | undefined {
  const inside = (R: number) => internalOf(R, fields.surface);
  const [white, black] = [inside(fields.white[i]), inside(fields.black[i])];
  const before = layerOf(inside(means[1][i]), inside(means[0][i]), white, black);
  const after = layerOf(inside(means[3][i]), inside(means[2][i]), white, black);
  if (!before || !after) return undefined;
  const scattering = Math.log(after.depth / before.depth);
  return [scattering + Math.log((after.a - 1) / (before.a - 1)), scattering];
}

/** By bands, of K and of S. */
function weightsOf(
  means: Means,
  bands: readonly number[],
  fields: ChartFields,
): readonly (readonly [number, number])[] {
  return bands.map((i) => {
    const shift = 1e-4;
    const base = logRatios(means, i, fields) ?? [0, 0];
    const squares = [0, 0];
    for (let g = 0; g < 4; g++) {
      const moved = means.map((mean, k) =>
        k === g ? mean.map((value, j) => (j === i ? value + shift : value)) : mean,
      );
      const found = logRatios([moved[0], moved[1], moved[2], moved[3]], i, fields) ?? [Infinity, Infinity];
      squares[0] += ((found[0] - base[0]) / shift) ** 2;
      squares[1] += ((found[1] - base[1]) / shift) ** 2;
    }
    return [1 / squares[0], 1 / squares[1]] as const;
  });
}

function weightedMean(
  means: Means,
  bands: readonly number[],
  weights: readonly (readonly [number, number])[],
  fields: ChartFields,
): readonly [number, number] {
  const sums = [0, 0];
  const totals = [0, 0];
  bands.forEach((band, k) => {
    const found = logRatios(means, band, fields);
    if (!found) return;
    for (const which of [0, 1] as const) {
      const weight = weights[k][which];
      if (!(weight > 0)) continue;
      sums[which] += weight * found[which];
      totals[which] += weight;
    }
  });
  return [sums[0] / totals[0], sums[1] / totals[1]];
}
