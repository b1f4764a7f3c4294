import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import { contrastRatio, filmSpectrum, hidingThickness, spreadingRate } from '../../src/strength/index.js';

// ISO 6504-3 and ASTM D2805: contrast ratio C = Y over black / Y over white, hiding where it reaches 0.98; D2805 writes R0 and
// R0.80 for a black of zero and a white of 0.80 and takes K and S from Kubelka's relations. Their relations, no printed figures.

const viewing = D65_10;
const bands = 31;
const flat = (value: number) =>
  createSpectrum({ start: 400, step: 10, values: new Float64Array(bands).fill(value), scale: 'fraction' });
const film = (K: number, S: number) => ({
  absorption: new Float64Array(bands).fill(K),
  scattering: new Float64Array(bands).fill(S),
  black: flat(0),
  white: flat(0.8),
});

describe('contrast ratio (ISO 6504-3, ASTM D2805)', () => {
  test('is the ratio of the luminous reflectances', () => {
    expect(contrastRatio(flat(0.735), flat(0.75), { viewing })).toBeCloseTo(0.98, 14);
  });

  test('of a film without thickness is that of its chart', () => {
    const over = (Rg: number) => filmSpectrum({ ...film(0.1, 1), thickness: 0, substrate: flat(Rg) });
    expect(contrastRatio(over(0.04), over(0.8), { viewing })).toBeCloseTo(0.05, 14);
  });
});

describe('thickness at a contrast ratio (ASTM D2805)', () => {
  // With K = 0: R0 = SX / (1 + SX), 1 / (1 - R0.80) = SX + 5, so (SX)² + 5 SX = 4 C / (1 - C).
  test.each([0.8, 0.95, 0.98])('a film that only scatters solves (SX)² + 5 SX = 4 C / (1 - C) at C = %f', (ratio) => {
    const SX = 0.07 * hidingThickness(film(0, 0.07), { viewing, ratio, surface: 'none' }).thickness;
    expect(SX * SX + 5 * SX).toBeCloseTo((4 * ratio) / (1 - ratio), 9);
  });

  // ASTM D2805: R0 at the contrast ratio C over a white W, from Kubelka's a = ½ (R + (R0 - R + W) / (R0 W)) with R = R0 / C.
  test.each([0.001, 0.01, 0.05])('a flat film has Kubelka a at the thickness found, K = %f', (K) => {
    const found = hidingThickness(film(K, 0.1), { viewing, surface: 'none' });
    const R0 = filmSpectrum({ ...film(K, 0.1), thickness: found.thickness, substrate: flat(0) }).values[0];
    const R = R0 / 0.98;
    expect((R + (R0 - R + 0.8) / (R0 * 0.8)) / 2).toBeCloseTo(1 + K / 0.1, 10);
  });
});

test.each([
  [100, 10],
  [50, 20],
  [125, 8],
])('a film of %i µm spreads %i m²/L, since a litre on a square metre is 1000 µm thick', (thickness, rate) => {
  expect(spreadingRate(thickness)).toBe(rate);
});
