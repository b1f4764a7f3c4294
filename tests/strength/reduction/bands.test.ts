import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../../src/colorimetry/index.js';
import { listBands, spectralBands } from '../../../src/strength/reduction/bands.js';
import { BANDS } from '../grey-dilution.js';

describe('names of bands', () => {
  test('draw neighbours together', () => {
    expect(listBands(BANDS, [2])).toBe('400 nm');
    expect(listBands(BANDS, [2, 3])).toBe('400 nm to 410 nm');
    expect(listBands(BANDS, [2, 3, 4, 7, 9, 10])).toBe('400 nm to 420 nm, 450 nm, 470 nm to 480 nm');
    expect(listBands(BANDS, [])).toBe('');
  });

  test('the range of absorption maximum and sum is 400 to 700 nm, both included', () => {
    expect([BANDS.nameOf(BANDS.first), BANDS.nameOf(BANDS.last)]).toEqual(['400 nm', '700 nm']);
    const own = spectralBands(D65_10, { start: 450, step: 20, count: 11 });
    expect([own.first, own.last]).toEqual([0, 10]);
    expect(() => spectralBands(D65_10, { start: 720, step: 10, count: 5 })).toThrow(
      expect.objectContaining({ code: 'grid-invalid', path: 'grid.start' }),
    );
  });
});
