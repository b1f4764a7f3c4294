import { expect, test } from 'vitest';
import { meanSpectrum } from '../../src/colorimetry/index.js';
import { COLORANTS, reduction } from '../strength/simulated-reductions.js';

const { blue } = COLORANTS;
const reference = reduction(blue, 1);

test('the mean of readings is taken wavelength by wavelength', () => {
  const mean = meanSpectrum([reduction(blue, 1), reduction(blue, 2), reduction(blue, 4)]);
  const at = 20;
  const values = [1, 2, 4].map((amount) => reduction(blue, amount).values[at]);
  expect(mean.values[at]).toBeCloseTo((values[0] + values[1] + values[2]) / 3, 15);
  expect(Array.from(meanSpectrum(reference).values)).toEqual(Array.from(reference.values));
});
