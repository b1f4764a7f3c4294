import { asReadings } from '../core/internal.js';
import { meanRow } from '../numeric/internal.js';
import { asSpectrum, assertSameGrid, createSpectrum, type Spectrum } from './spectrum.js';

/**
 * Mean reflectance of several readings of one sample.
 *
 * @param readings - one spectrum or several on one grid, at least one
 * @returns their mean, wavelength by wavelength
 * @throws TintladderError `empty`, `grid-mismatch`
 * @example
 * const grey = (value) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(value), scale: 'fraction' });
 * meanSpectrum([grey(0.25), grey(0.75)]).values[0] // 0.5
 * @see JCGM 100:2008, 4.2.1
 */
export function meanSpectrum(readings: Spectrum | readonly Spectrum[]): Spectrum {
  const given = asReadings(readings, 'readings');
  const list = given.map((reading, i) => asSpectrum(reading, given.length === 1 ? 'readings' : `readings[${i}]`));
  const [{ start, step }] = list;
  list.forEach((reading, i) => {
    assertSameGrid(list[0], reading, `readings[${i}]`);
  });
  const values = meanRow(list.map((reading) => reading.values));
  return createSpectrum({ start, step, values, scale: 'fraction' });
}
