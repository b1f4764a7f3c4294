import { TintladderError } from '../errors.js';
import { assertSameGrid, createSpectrum, type Spectrum } from './spectrum.js';

/**
 * The mean of replicate spectra, reading by reading.
 *
 * @param spectra - one or more, all on one grid
 * @returns their arithmetic mean
 * @throws TintladderError `empty` for no spectrum, `grid-mismatch` if the grids differ
 * @example
 * const low = createSpectrum({ start: 400, interval: 10, values: [0.1, 0.2], scale: 'fraction' });
 * const high = createSpectrum({ start: 400, interval: 10, values: [0.3, 0.6], scale: 'fraction' });
 * meanSpectrum([low, high]).values[1] // 0.4
 */
export function meanSpectrum(spectra: readonly Spectrum[]): Spectrum {
  const [first] = spectra;
  if (!first) throw new TintladderError('empty', { place: 'spectra', seen: 0, expected: 'one spectrum or more' });
  const sum = new Float64Array(first.values.length);
  spectra.forEach((spectrum, i) => {
    assertSameGrid(first, spectrum, `spectra[${i}]`);
    spectrum.values.forEach((value, band) => {
      sum[band] += value;
    });
  });
  const values = sum.map((value) => value / spectra.length);
  return createSpectrum({ start: first.start, interval: first.interval, values, scale: 'fraction' });
}
