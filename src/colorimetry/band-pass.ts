import { asSpectrum, createSpectrum, type Spectrum } from './spectrum.js';

/** For a triangular band-pass as wide at half height as the readings are apart; its own moments give 1/12. */
const ALPHA = 0.083;

/**
 * A spectrum corrected for the band-pass of the instrument.
 *
 * For readings whose band-pass is triangular and as wide as their step. Many instruments correct their readings already: ask before
 * correcting twice.
 *
 * @param spectrum - reflectance factor as read, not yet corrected
 * @returns the corrected spectrum on the same grid: inside `-α R(i-1) + (1 + 2α) R(i) - α R(i+1)`, at the ends
 * `(1 + α) R(0) - α R(1)` and its mirror image, with α = 0.083
 * @throws TintladderError `reflectance-out-of-range` where the correction drives a reading below 0
 * @example
 * const spectrum = createSpectrum({ start: 400, step: 10, values: [0.1, 0.2, 0.5], scale: 'fraction' });
 * correctBandPass(spectrum).values[1] // 0.1834
 * @see ASTM E2729, the current source for rectifying band-pass differences; Stearns & Stearns (1988), Color Res. Appl. 13, 257-259, for the
 * coefficients used here; ASTM E308
 */
export function correctBandPass(spectrum: Spectrum): Spectrum {
  const { start, step, values: read } = asSpectrum(spectrum, 'spectrum');
  // A missing neighbour counts as equal to the end reading, which is the published end rule.
  const values = read.map((value, i) => {
    const before = read[Math.max(0, i - 1)];
    const after = read[Math.min(read.length - 1, i + 1)];
    return value + ALPHA * (2 * value - before - after);
  });
  return createSpectrum({ start, step, values, scale: 'fraction' });
}
