import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import { bronzingWarnings, drawdownFilm } from '../../src/strength/index.js';

const spectrum = (values: readonly number[]) => createSpectrum({ start: 600, step: 10, values, scale: 'fraction' });

describe('a mass tone that is lighter than its tint', () => {
  // The tint absorbs most at 620 nm, half as much at 610 nm, and hardly at 600 nm.
  const tint = spectrum([0.6, 0.09, 0.045]);

  test('bronzes where the tint absorbs', () => {
    const [warning] = bronzingWarnings(spectrum([0.7, 0.1, 0.05]), tint);
    expect(warning).toMatchObject({ code: 'bronzing', path: '610-620 nm', figures: { wavelengths: [610, 620] } });
  });

  test('does not within 0.003, nor where the tint hardly absorbs', () => {
    expect(bronzingWarnings(spectrum([0.7, 0.0925, 0.0475]), tint)).toEqual([]);
  });

  test('is compared on one grid', () => {
    expect(() => bronzingWarnings(spectrum([0.1, 0.1]), tint)).toThrow(
      expect.objectContaining({ code: 'grid-mismatch', path: 'masstone' }),
    );
  });
});

describe('light that a film can not have reflected', () => {
  const options = { viewing: D65_10, surface: 'none' } as const;
  const chart = { black: spectrum([0.05, 0.05, 0.05, 0.05]), white: spectrum([0.85, 0.85, 0.85, 0.85]) };
  const codes = (overBlack: readonly number[], overWhite: readonly number[]) =>
    drawdownFilm({ ...chart, overBlack: spectrum(overBlack), overWhite: spectrum(overWhite) }, options)
      .warnings.filter(({ code }) => code === 'fluorescence')
      .map(({ path }) => path);

  test('is a hump over black, beyond which the film is lighter over white and darker over black', () => {
    expect(codes([0.045, 0.056, 0.05, 0.05], [0.2, 0.5, 0.7, 0.75])).toEqual(['610 nm']);
  });

  test('is no hump that stands over white too, nor one of a film that scatters', () => {
    expect(codes([0.045, 0.056, 0.05, 0.05], [0.2, 0.75, 0.7, 0.7])).toEqual([]);
    expect(codes([0.2, 0.256, 0.22, 0.22], [0.4, 0.5, 0.7, 0.75])).toEqual([]);
  });

  test('is a reading above 1', () => {
    expect(codes([0.5, 0.5, 0.5, 0.5], [0.9, 1.01, 0.9, 0.9])).toEqual(['610 nm']);
  });
});
