import type { Spectrum } from '../colorimetry/index.js';
import { opaqueReflectance, ratioOf } from './kubelka-munk.js';
import { internalOf, measuredOf } from './saunderson.js';
import type { Surface } from './surface.js';

/** Readings of a colorant with its white: measured reflectances on one grid. */
export interface MeasuredLadder {
  readonly white: Spectrum;
  /** Amount of colorant per white with the reading; Infinity for the mass tone */
  readonly steps: readonly { readonly amount: number; readonly spectrum: Spectrum }[];
}

/** Rounds of reweighting; the weights depend on S only weakly. */
const ROUNDS = 4;
/** A mass tone is entered as this much colorant per white, next to which the white is nothing. */
const MASSTONE = 1e6;

/**
 * What the two-constant mixture leaves unexplained of a ladder for a stated surface: measured minus fitted reflectance, one row for each step;
 * nothing where a reading is impossible with this surface.
 *
 * At each wavelength k and s of the colorant are free, not below 0: the surface alone is common to all.
 */
export function ladderMisfit({ white, steps }: MeasuredLadder, surface: Surface): Float64Array[] | undefined {
  const rows = steps.map(() => new Float64Array(white.values.length));
  for (let i = 0; i < white.values.length; i++) {
    const ofWhite = internalOf(white.values[i], surface);
    if (!(ofWhite > 0 && ofWhite <= 1)) return undefined;
    const Kw = ratioOf(ofWhite);
    const readings = steps.map(({ amount, spectrum }) => {
      const R = internalOf(spectrum.values[i], surface);
      return { c: Math.min(amount, MASSTONE), R, F: ratioOf(R), measured: spectrum.values[i] };
    });
    if (readings.some(({ R }) => !(R > 0 && R < 1))) return undefined;
    const { k, s } = bandCoefficients(readings, Kw);
    readings.forEach(({ c, measured }, j) => {
      rows[j][i] = measured - measuredOf(opaqueReflectance((Kw + c * k) / (1 + c * s)), surface);
    });
  }
  return rows;
}

/** k and s at one wavelength by least squares on `c k - c F s = F - Kw`, weighted so that an error of reflectance counts equally. */
function bandCoefficients(readings: readonly { c: number; R: number; F: number }[], Kw: number) {
  let [k, s] = [0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    let [kk, ks, ss, kt, st] = [0, 0, 0, 0, 0];
    for (const { c, R, F } of readings) {
      const weight = (2 * R * R) / (1 - Math.min(R, 0.99) ** 2) / (1 + c * s);
      const [a, b, t] = [weight * c, -weight * c * F, weight * (F - Kw)];
      kk += a * a;
      ks += a * b;
      ss += b * b;
      kt += a * t;
      st += b * t;
    }
    const determinant = kk * ss - ks * ks;
    [k, s] =
      determinant > 1e-14 * kk * ss
        ? [(kt * ss - st * ks) / determinant, (st * kk - kt * ks) / determinant]
        : [kt / kk, 0];
    if (s < 0) [k, s] = [Math.max(0, kt / kk), 0];
    else if (k < 0) [k, s] = [0, Math.max(0, st / ss)];
  }
  return { k, s };
}
