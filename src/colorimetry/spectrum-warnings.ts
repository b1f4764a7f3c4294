import type { Warning } from '../core/index.js';
import { asSpectrum, type Spectrum } from './spectrum.js';

/**
 * Below 420 nm a fourth difference reaches into the band edge of titanium dioxide, which every white paint has, and above 700 nm the
 * observers see next to nothing: a note there would stand on every reading and tell nothing.
 */
const SEEN = { from: 420, to: 700 };

/** Interpolation between readings that is uncertain by more than this reflectance is worth a note (our own rule, no source). */
const UNCERTAIN = 0.005;

/**
 * What a reader of colours computed from this spectrum should know: features too narrow for the step, and reflectance above 1.
 *
 * A curve between readings is known only as far as the readings follow a smooth line. Its uncertainty is taken as the largest error term of
 * cubic interpolation, 3/128 of the fourth difference of the readings; above 0.005 between 420 and 700 nm the first warning is given.
 *
 * @param spectrum - reflectance factor
 * @returns warnings `narrow-features` and `reflectance-above-one`, each at most once, placed at the wavelength where it is worst; empty
 * for a smooth spectrum
 * @example
 * const values = [0.5, 0.5, 0.5, 0.9, 0.5, 0.5, 0.5];
 * spectrumWarnings(createSpectrum({ start: 400, step: 10, values, scale: 'fraction' }))[0].path // '430 nm'
 * @see Hildebrand (1974), Introduction to Numerical Analysis, for the error term
 */
export function spectrumWarnings(spectrum: Spectrum): Warning[] {
  const { start, step, values } = asSpectrum(spectrum, 'spectrum');
  const warnings: Warning[] = [];
  const at = (i: number) => `${start + i * step} nm`;

  const doubt = values.map((_, i) =>
    i < 2 || i > values.length - 3 || start + i * step < SEEN.from || start + i * step > SEEN.to
      ? 0
      : (3 / 128) * Math.abs(values[i - 2] - 4 * values[i - 1] + 6 * values[i] - 4 * values[i + 1] + values[i + 2]),
  );
  const doubtful = indexOfLargest(doubt);
  if (doubt[doubtful] > UNCERTAIN) {
    warnings.push({
      code: 'narrow-features',
      message: `Near ${at(doubtful)} the reflectance changes faster than readings ${step} nm apart can resolve (interpolation uncertain by ${doubt[doubtful].toFixed(3)}); colours computed from them may be off.`,
      path: at(doubtful),
    });
  }

  const brightest = indexOfLargest(values);
  if (values[brightest] > 1) {
    warnings.push({
      code: 'reflectance-above-one',
      message: `The reflectance factor reaches ${values[brightest].toFixed(3)} at ${at(brightest)}, as a fluorescent or specular sample may; its colour depends on the light source of the instrument.`,
      path: at(brightest),
    });
  }
  return warnings;
}

function indexOfLargest(values: Float64Array): number {
  return values.reduce((best, value, i) => (value > values[best] ? i : best), 0);
}
