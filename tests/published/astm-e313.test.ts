// ASTM E313: yellowness and whiteness of the perfect reflecting diffuser are 0 and 100 by definition; with the white points of
// ASTM E308 the four printed coefficient pairs must give 0 within their last digit.
import { describe, expect, test } from 'vitest';
import {
  C_2,
  C_10,
  D50_2,
  D50_10,
  D65_2,
  D65_10,
  whiteness,
  whitePoint,
  yellowness,
} from '../../src/colorimetry/index.js';

const E308_WHITES = [
  [C_2, { X: 98.074, Y: 100, Z: 118.232 }],
  [C_10, { X: 97.285, Y: 100, Z: 116.145 }],
  [D65_2, { X: 95.047, Y: 100, Z: 108.883 }],
  [D65_10, { X: 94.811, Y: 100, Z: 107.304 }],
] as const;

describe('yellowness', () => {
  test.each(E308_WHITES)('is 0 for the white of %o', (viewing, white) => {
    // Half a unit of the last digit of Cx and Cz, times X and Z.
    expect(Math.abs(yellowness(white, viewing))).toBeLessThan(0.00005 * (white.X + white.Z));
  });

  test('is lower for a bluish and higher for a yellowish white', () => {
    const white = whitePoint(D65_10);
    expect(yellowness({ ...white, Z: white.Z * 1.05 }, D65_10)).toBeLessThan(-5);
    expect(yellowness({ ...white, Z: white.Z * 0.95 }, D65_10)).toBeGreaterThan(5);
  });
});

describe('whiteness and tint', () => {
  test.each([C_2, C_10, D50_2, D50_10, D65_2, D65_10])('are 100 and 0 for the perfect diffuser under %o', (viewing) => {
    const { whiteness: W, tint, withinLimits, warnings } = whiteness(whitePoint(viewing), viewing);
    expect(W).toBeCloseTo(100, 10);
    expect(tint).toBeCloseTo(0, 10);
    expect(withinLimits).toBe(true);
    expect(warnings).toEqual([]);
  });
});
