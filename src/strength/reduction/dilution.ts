import { type Lab, labFromXyz, type Xyz } from '../../colorimetry/index.js';
import { TintladderError, type Warning } from '../../core/index.js';
import type { SurfaceCorrection } from '../../kubelka-munk/index.js';
import { measuredOf, opaqueReflectance } from '../../kubelka-munk/internal.js';
import { type Bands, listBands, tristimulusOf } from './bands.js';

/**
 * What both colorants add to the K/S of one white base, band by band. Everything a criterion asks is a function of the
 * factor t, the amount of the trial's added absorption: `F(t) = F white + t q trial`.
 */
export interface Dilution {
  readonly bands: Bands;
  readonly surface: SurfaceCorrection;
  /** K/S of the white base; zero where no white was read. */
  readonly white: Float64Array;
  /** K/S that the colorant adds in the reference and in the trial. */
  readonly reference: Float64Array;
  readonly trial: Float64Array;
  /** Reflectances of the reference as measured. */
  readonly measuredReference: Float64Array;
}

/** Factors beyond these are no reductions of one another: a thousandth and a thousand times the amount. */
const SMALLEST_FACTOR = 1e-3;
const LARGEST_FACTOR = 1e3;

/**
 * A negative K/S of the diluted trial up to this share of its largest added K/S is noise of a white base that hardly absorbs:
 * it counts as zero, which a note says. The package's own limit.
 */
const NOISE = 0.01;

/** A negative K/S this small is rounding of a sum. */
const ROUNDING = 1e-12;

/** Measured reflectances of the trial with its added absorption taken t times. */
export function dilutedReflectances(dilution: Dilution, factor: number): Float64Array {
  return dilution.white.map((_, band) => dilutedReflectance(dilution, factor, band));
}

/** Tristimulus values of the trial with its added absorption taken t times; searches call it often, so it makes no array. */
export function dilutedTristimulus(dilution: Dilution, factor: number): Xyz {
  const { x, y, z } = dilution.bands;
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let band = 0; band < x.length; band++) {
    const reflectance = dilutedReflectance(dilution, factor, band);
    X += x[band] * reflectance;
    Y += y[band] * reflectance;
    Z += z[band] * reflectance;
  }
  return { X, Y, Z };
}

/** CIELAB of the trial with its added absorption taken t times. */
export function dilutedLab(dilution: Dilution, factor: number): Lab {
  return labFromXyz(dilutedTristimulus(dilution, factor), dilution.bands.white);
}

function dilutedReflectance({ surface, white, trial }: Dilution, factor: number, band: number): number {
  return measuredOf(opaqueReflectance(Math.max(white[band] + factor * trial[band], 0)), surface);
}

/** CIELAB of the bands' reflectances. */
export function labOf(bands: Bands, reflectances: Float64Array): Lab {
  return labFromXyz(tristimulusOf(bands, reflectances), bands.white);
}

/** The range of factors over which the K/S of the diluted trial is nowhere negative, and the band that ends it. */
export function factorRange({ bands, white, trial }: Dilution): { low: number; high: number; endedBy?: string } {
  const noise = NOISE * Math.max(0, ...trial);
  let high = LARGEST_FACTOR;
  let endedBy: string | undefined;
  for (let i = 0; i < bands.count; i++) {
    const shortfall = -trial[i] - noise;
    if (shortfall > 0 && white[i] / shortfall < high) {
      high = white[i] / shortfall;
      endedBy = bands.nameOf(i);
    }
  }
  return { low: SMALLEST_FACTOR, high, ...(endedBy !== undefined && { endedBy }) };
}

/** A note where the matched trial's K/S would be a little below zero and counts as zero. */
export function noteNegativeMatch({ bands, white, trial }: Dilution, factor: number): Warning[] {
  const negative = Array.from(trial.keys()).filter((band) => white[band] + factor * trial[band] < -ROUNDING);
  if (negative.length === 0) return [];
  const message =
    `The K/S of the matched trial would be a little below zero at ${listBands(bands, negative)} and counts as zero there: ` +
    `the white base hardly absorbs, and its reading is as uncertain as that.`;
  const path = `trial at ${bands.nameOf(negative[0])}`;
  return [{ code: 'negative-absorption', message, path, figures: { bands: negative.map(bands.nameOf) } }];
}

/**
 * Refuses a factor at which the trial's K/S would be negative in some band.
 *
 * @throws TintladderError `no-solution` naming the band
 */
export function assertReachable(dilution: Dilution, factor: number): void {
  const { low, high, endedBy } = factorRange(dilution);
  if (factor >= low && factor <= high) return;
  throw new TintladderError('no-solution', {
    path: endedBy && factor > high ? `trial at ${endedBy}` : 'trial',
    received: factor,
    expected: `a factor on its amount from ${low} to ${high}, where no K/S is negative`,
    hint: 'Is the white base the one that both reductions were made with?',
  });
}
