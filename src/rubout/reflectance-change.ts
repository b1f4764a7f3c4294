import { gridOf, type Viewing } from '../colorimetry/index.js';
import { spectralBands } from '../strength/bands.js';
import { meanSpectrum } from '../strength/index.js';
import type { Area } from './readings.js';
import { meanLab } from './scatter.js';

/**
 * By how much reflectance falls where it falls, and rises where it rises, on rubbing: each as a sum over the spectrum of the
 * cube root of reflectance, which is about as even as the eye, weighted with what the observer sees.
 *
 * Absorption that grows lowers reflectance at that wavelength, and scattering that grows raises it. So a change of one sign
 * is one of strength, of one pigment or of all, and a change of both signs is an exchange of one pigment for another.
 */
export interface ReflectanceChange {
  readonly falls: number;
  readonly rises: number;
}

/** The change from spectra, or from X, Y and Z where only Lab values are at hand. */
export function reflectanceChange([unrubbed, rubbed]: readonly [Area, Area], viewing: Viewing): ReflectanceChange {
  const { changes, weights } =
    unrubbed.spectra && rubbed.spectra
      ? spectralChange(unrubbed, rubbed, viewing)
      : tristimulusChange(unrubbed, rubbed);
  let falls = 0;
  let rises = 0;
  let all = 0;
  for (let i = 0; i < changes.length; i++) {
    if (changes[i] < 0) falls -= weights[i] * changes[i];
    else rises += weights[i] * changes[i];
    all += weights[i];
  }
  return { falls: falls / all, rises: rises / all };
}

function spectralChange({ spectra: before = [] }: Area, { spectra: after = [] }: Area, viewing: Viewing) {
  const from = meanSpectrum(before);
  const to = meanSpectrum(after).values;
  const { x, y, z } = spectralBands(viewing, gridOf(from));
  // Weights of an interpolating table are a little negative at the ends of the range.
  return {
    changes: to.map((value, i) => Math.cbrt(value) - Math.cbrt(from.values[i])),
    weights: x.map((value, i) => Math.max(value + y[i] + z[i], 0)),
  };
}

function tristimulusChange(unrubbed: Area, rubbed: Area) {
  const from = meanLab(unrubbed.labs);
  const to = meanLab(rubbed.labs);
  const fy = (to.L - from.L) / 116;
  return {
    changes: Float64Array.of(fy + (to.a - from.a) / 500, fy, fy - (to.b - from.b) / 200),
    weights: Float64Array.of(1, 1, 1),
  };
}
