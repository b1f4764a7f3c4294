import { expect, test } from 'vitest';
import { externalReflection, internalReflectance, kOverS, reflectanceFromKOverS } from '../../src/strength/index.js';

// Textbook reflection at normal incidence: glass in air 4 % (Hecht, Optics), water 2.0 %, diamond 17 %.
test.each([
  [1.5, '0.040'],
  [1.333, '0.020'],
  [2.417, '0.172'],
])('refractive index %d reflects %s', (index, printed) => {
  expect(Math.abs(externalReflection(index) - Number(printed))).toBeLessThanOrEqual(0.0005);
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
