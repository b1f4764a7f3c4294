import { expect, test } from 'vitest';
import { externalReflection, internalReflectance, kOverS, reflectanceFromKOverS } from '../../src/strength/index.js';

// Fresnel at normal incidence, ((n - 1) / (n + 1))², worked by hand: n = 1.5 gives (0.5 / 2.5)² = 0.04, the 4 % that optics textbooks
// give for glass; n = 3 gives (2 / 4)² = 0.25; n = 1 is no boundary.
test.each([
  [1.5, 0.04],
  [3, 0.25],
  [1, 0],
])('refractive index %d reflects %d', (index, reflected) => {
  expect(externalReflection(index)).toBeCloseTo(reflected, 15);
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
