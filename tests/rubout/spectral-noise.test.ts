import { expect, test } from 'vitest';
import { estimateNoise, largerNoise, scaleNoise } from '../../src/rubout/spectral-noise.js';
import { randomFrom } from './random.js';

const N = 31;
const flat = Float64Array.from({ length: N }, () => 1);
const tilt = Float64Array.from({ length: N }, (_, i) => (i - 15) / 15);

test('the sizes of offset, tilt and wavelengths come back from many readings (seed 8)', () => {
  const { normal } = randomFrom(8);
  const count = 400;
  const residuals = Array.from({ length: count }, () => {
    const [offset, slope] = [0.003 * normal(), 0.001 * normal()];
    return flat.map((one, i) => offset * one + slope * tilt[i] + 0.0005 * normal());
  });
  const { terms, bands, directions } = estimateNoise(residuals, count, [flat, tilt]);
  // a standard deviation of 400 readings is known to 3.5 %; within three of those
  expect(Math.sqrt(terms[0].variance) / 0.003).toBeCloseTo(1, 0.98);
  expect(Math.sqrt(terms[1].variance) / 0.001).toBeCloseTo(1, 0.98);
  expect(Math.sqrt(bands) / 0.0005).toBeCloseTo(1, 1);
  expect(directions).toBeGreaterThan(20);
});

test('a smooth rest is spread over few directions (seed 9)', () => {
  const { normal } = randomFrom(9);
  const residuals = Array.from({ length: 40 }, () => {
    const size = 0.002 * normal();
    return flat.map((_, i) => size * Math.sin(i / 2) + 1e-5 * normal());
  });
  expect(estimateNoise(residuals, 40, [flat, tilt]).directions).toBeLessThan(2);
});

test('a factor scales every variance, and of two estimates each term is the larger', () => {
  const noise = estimateNoise([flat.map((one) => 0.001 * one)], 1, [flat, tilt]);
  const doubled = scaleNoise(noise, 2);
  expect(doubled.terms[0].variance).toBeCloseTo(2 * noise.terms[0].variance, 15);
  expect(largerNoise(noise, doubled).bands).toBe(doubled.bands);
  expect(largerNoise(doubled, noise).terms).toEqual(doubled.terms);
});
