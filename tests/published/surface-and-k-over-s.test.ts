import { expect, test } from 'vitest';
import { externalReflection, internalReflectance, kOverS, reflectanceFromKOverS } from '../../src/strength/index.js';

// Reflection of a smooth surface in air at normal incidence as optics textbooks give it (Hecht, Optics, for glass): glass 4 %,
// water 2.0 %, diamond 17 %. Transcribed from memory; the Saunderson value below is worked by hand with the first.
test.each([
  [1.5, '4.0', 0.05],
  [1.333, '2.0', 0.05],
  [2.417, '17', 0.5],
])('refractive index %d reflects %s %%', (index, printed, tolerance) => {
  expect(Math.abs(100 * externalReflection(index) - Number(printed))).toBeLessThanOrEqual(tolerance);
});

// (1 - R)² / 2R is rational for these R, so the values are exact: Kubelka & Munk (1931) and every table of the function.
test.each([
  [0.05, 9.025],
  [0.1, 4.05],
  [0.2, 1.6],
  [0.25, 1.125],
  [0.4, 0.45],
  [0.5, 0.25],
  [0.8, 0.025],
  [1, 0],
])('K/S of R = %d is %d, both ways', (reflectance, ratio) => {
  expect(Math.abs(kOverS(reflectance) - ratio)).toBeLessThanOrEqual(1e-13 * ratio);
  expect(Math.abs(reflectanceFromKOverS(ratio) - reflectance)).toBeLessThanOrEqual(1e-15);
});

// Saunderson (1942) with k1 = 0.04 and k2 = 0.6 by hand: (0.50 - 0.04) / (1 - 0.04 - 0.6 + 0.6 · 0.50) = 0.46 / 0.66.
test('Saunderson by hand, both specular modes', () => {
  const surface = { external: 0.04, internal: 0.6 };
  expect(internalReflectance(0.5, { ...surface, specular: 'included' })).toBeCloseTo(0.46 / 0.66, 14);
  expect(internalReflectance(0.46, { ...surface, specular: 'excluded' })).toBeCloseTo(0.46 / 0.66, 14);
});
