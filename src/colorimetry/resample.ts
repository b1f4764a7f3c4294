import { TintladderError } from '../core/index.js';
import { interpolateLagrange, interpolateSprague } from '../numeric/internal.js';
import { assertGrid, describeGrid, type Grid } from './grid.js';
import { asSpectrum, createSpectrum, gridOf, type Spectrum } from './spectrum.js';

/** Positions closer to a reading than this, in nm, are that reading. */
const SAME_WAVELENGTH = 1e-6;

/**
 * A spectrum on another wavelength grid, by Sprague's interpolation (cubic Lagrange for fewer than six readings).
 *
 * Not needed before `tristimulus`, which serves every grid; meant for comparing spectra of different instruments band by
 * band. Interpolation adds no detail: a finer grid shows nothing that the readings do not.
 *
 * @param spectrum - reflectance factor
 * @param grid - first wavelength and step in nm and number of readings, inside the range of the readings
 * @returns the spectrum on `grid`
 * @throws TintladderError `grid-invalid` for a grid that no spectrum may have; `out-of-range` for one that reaches beyond the
 * readings; `reflectance-out-of-range` where the curve between readings swings below 0
 * @example
 * const spectrum = createSpectrum({ start: 400, step: 10, values: [1, 2, 4, 7, 11, 16, 22], scale: 'percent' });
 * resample(spectrum, { start: 405, step: 10, count: 6 }).values[1] // 0.02875
 * @see CIE 015:2018 and CIE 167:2005 for Sprague's interpolation of evenly spaced data
 */
export function resample(spectrum: Spectrum, grid: Grid): Spectrum {
  assertGrid(grid);
  const { start, step, values } = asSpectrum(spectrum, 'spectrum');
  const last = values.length - 1;
  const excess = Math.max(start - grid.start, grid.start + (grid.count - 1) * grid.step - (start + last * step));
  if (excess > SAME_WAVELENGTH) {
    throw new TintladderError('out-of-range', {
      path: 'grid',
      received: grid,
      expected: `a grid inside the readings, ${describeGrid(gridOf(spectrum))}`,
    });
  }
  const curve = values.length < 6 ? interpolateLagrange(values) : interpolateSprague(values);
  const resampled = Float64Array.from({ length: grid.count }, (_, i) => {
    const position = (grid.start + i * grid.step - start) / step;
    const nearest = Math.round(position);
    return Math.abs(position - nearest) * step < SAME_WAVELENGTH ? values[nearest] : curve(position);
  });
  return createSpectrum({ start: grid.start, step: grid.step, values: resampled, scale: 'fraction' });
}
