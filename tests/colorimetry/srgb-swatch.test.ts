import { converter, formatHex } from 'culori';
import { describe, expect, test } from 'vitest';
import { A_2, C_2, D50_2, D65_2, D65_10, srgbSwatch } from '../../src/colorimetry/index.js';

describe('srgbSwatch', () => {
  test.each([A_2, C_2, D50_2, D65_2, D65_10])('shows white, grey and black as neutral under %o', (viewing) => {
    expect(srgbSwatch({ L: 100, a: 0, b: 0 }, viewing)).toMatchObject({ hex: '#ffffff', inGamut: true });
    expect(srgbSwatch({ L: 0, a: 0, b: 0 }, viewing)).toMatchObject({ hex: '#000000', inGamut: true });
    const { rgb } = srgbSwatch({ L: 50, a: 0, b: 0 }, viewing);
    expect(Math.max(...rgb) - Math.min(...rgb)).toBeLessThan(1e-5);
  });

  test('equals culori for colours under D65, 2 degrees, inside the gamut', () => {
    const rgb = converter('rgb');
    for (const [L, a, b] of [
      [50, 20, 30],
      [70, -20, 10],
      [30, 10, -30],
      [90, 2, -3],
    ]) {
      const swatch = srgbSwatch({ L, a, b }, D65_2);
      const theirs = rgb({ mode: 'lab65', l: L, a, b });
      // The two take D65 with different digits.
      [theirs.r, theirs.g, theirs.b].forEach((value, i) => {
        expect(Math.abs(swatch.rgb[i] - value)).toBeLessThan(2e-4);
      });
      expect(swatch).toMatchObject({ hex: formatHex(theirs), inGamut: true, adaptation: 'Bradford' });
    }
  });

  test('equals culori’s Bradford adaptation for colours under D50, 2 degrees', () => {
    const rgb = converter('rgb');
    const theirs = rgb({ mode: 'lab', l: 55, a: 25, b: 35 });
    const { rgb: ours } = srgbSwatch({ L: 55, a: 25, b: 35 }, D50_2);
    [theirs.r, theirs.g, theirs.b].forEach((value, i) => {
      expect(Math.abs(ours[i] - value)).toBeLessThan(5e-4);
    });
  });

  test('tells a colour that sRGB does not hold, and gives one that it does', () => {
    const { rgb, hex, inGamut } = srgbSwatch({ L: 60, a: -80, b: 20 }, D65_10);
    expect(inGamut).toBe(false);
    expect(hex).toMatch(/^#[0-9a-f]{6}$/);
    for (const value of rgb) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(1);
    }
  });

  test('refuses a colour that is not finite', () => {
    expect(() => srgbSwatch({ L: Number.NaN, a: 0, b: 0 }, D65_10)).toThrow(
      expect.objectContaining({ code: 'not-finite', path: 'lab.L' }),
    );
  });
});
