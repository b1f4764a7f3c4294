import { describe, expect, test } from 'vitest';
import { assertReachable, type Dilution, factorRange } from '../../../src/strength/reduction/dilution.js';
import { flatBands, GREY } from '../grey-dilution.js';

describe('the factors that are looked at', () => {
  test('end where the diluted K/S of a band would be negative beyond noise, which is named', () => {
    const trial = flatBands(0.5);
    trial[10] = -0.045;
    const white = flatBands(0.02);
    // 0.02 / (0.045 - 1 % of 0.5)
    expect(factorRange({ ...GREY, white, trial })).toEqual({
      low: 1e-3,
      high: expect.closeTo(0.5, 9),
      endedBy: '480 nm',
    });
    // less, or as much: the first such band is named
    for (const other of [-0.025, -0.045]) {
      trial[20] = other;
      expect(factorRange({ ...GREY, white, trial }).endedBy).toBe('480 nm');
    }
    trial[20] = -0.085;
    expect(factorRange({ ...GREY, white, trial })).toEqual({
      low: 1e-3,
      high: expect.closeTo(0.25, 9),
      endedBy: '580 nm',
    });
  });

  test('are all that a criterion may give: their ends are, and beyond them the band that ends them is named', () => {
    const trial = flatBands(0.5);
    trial[10] = -0.045;
    // 0.02 / (0.045 - 1 % of 0.5) is 0.5
    const ended: Dilution = { ...GREY, white: flatBands(0.02), trial };
    for (const factor of [1e-3, 1, 1e3]) expect(() => assertReachable(GREY, factor)).not.toThrow();
    for (const [dilution, factor, path] of [
      [GREY, 0.99e-3, 'trial'],
      [GREY, 1.01e3, 'trial'],
      [ended, 0.99e-3, 'trial'],
      [ended, 0.51, 'trial at 480 nm'],
    ] as const) {
      expect(() => assertReachable(dilution, factor)).toThrow(expect.objectContaining({ code: 'no-solution', path }));
    }
  });
});
