import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, type Spectrum } from '../../src/colorimetry/index.js';
import {
  contrastRatio,
  filmSpectrum,
  hidingThickness,
  measuredReflectance,
  spreadingRate,
} from '../../src/strength/index.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const viewing = D65_10;
const bands = 31;
const spectrum = (at: (nm: number) => number): Spectrum =>
  createSpectrum({
    start: 400,
    step: 10,
    values: Array.from({ length: bands }, (_, i) => at(400 + 10 * i)),
    scale: 'fraction',
  });
const black = spectrum(() => 0.01);
const white = spectrum(() => 0.8);
// an invented blue: absorbing in the long waves
const absorption = Array.from({ length: bands }, (_, i) => 0.002 + 0.05 / (1 + Math.exp((560 - 400 - 10 * i) / 25)));
const scattering = Array.from({ length: bands }, (_, i) => 0.09 - 0.001 * i);

describe('contrast ratio', () => {
  test('of an opaque film is 1', () => expect(contrastRatio(white, white, { viewing })).toBe(1));

  test('refuses a film without any light and two grids', () => {
    expect(() =>
      contrastRatio(
        black,
        spectrum(() => 0),
        { viewing },
      ),
    ).toThrow(fault('zero-reflectance', 'Y of overWhite'));
    const short = createSpectrum({ start: 400, step: 10, values: [0.1, 0.1], scale: 'fraction' });
    expect(() => contrastRatio(black, short, { viewing })).toThrow(fault('grid-mismatch', 'overWhite'));
  });
});

describe('hiding thickness', () => {
  const film = { absorption, scattering, black, white };

  test('is where the film has the ratio asked for', () => {
    for (const ratio of [0.02, 0.5, 0.95, 0.98, 0.9999]) {
      const found = hidingThickness(film, { viewing, ratio, surface: 'none' });
      const over = (substrate: Spectrum) => filmSpectrum({ ...film, ...found, substrate });
      expect(contrastRatio(over(black), over(white), { viewing })).toBeCloseTo(ratio, 12);
    }
    expect(hidingThickness(film, { viewing, surface: 'none' }).contrastRatio).toBe(0.98);
  });

  test('with a surface is where the measured film has the ratio', () => {
    const surface = { external: 0.04, internal: 0.6, specular: 'excluded' } as const;
    const { thickness } = hidingThickness(film, { viewing, surface });
    const over = (substrate: Spectrum) => measuredReflectance(filmSpectrum({ ...film, thickness, substrate }), surface);
    expect(contrastRatio(over(black), over(white), { viewing })).toBeCloseTo(0.98, 12);
    expect(thickness).not.toBeCloseTo(hidingThickness(film, { viewing, surface: 'none' }).thickness, 2);
  });

  test.each([1e3, 1e12, 1e-12])('scales with the unit of thickness, K and S %d times as large', (times) => {
    const other = {
      ...film,
      absorption: absorption.map((k) => times * k),
      scattering: scattering.map((s) => times * s),
    };
    const ratio =
      hidingThickness(film, { viewing, surface: 'none' }).thickness /
      hidingThickness(other, { viewing, surface: 'none' }).thickness;
    expect(ratio / times).toBeCloseTo(1, 12);
  });

  test('is found just above the contrast of the bare chart', () => {
    const ratio = 0.0125 * (1 + 1e-9);
    const found = hidingThickness(film, { viewing, ratio, surface: 'none' });
    const over = (substrate: Spectrum) => filmSpectrum({ ...film, ...found, substrate });
    // the ratio lies 1.25e-11 above that of the chart
    expect(contrastRatio(over(black), over(white), { viewing })).toBeCloseTo(ratio, 15);
  });

  test('is the thinnest where the ratio is reached more than once', () => {
    // Both fields are alike from 560 to 600 nm. A thin film blackens the short waves, where they differ, and so evens the fields out; a
    // thicker one blackens the middle too, which leaves the contrast of the long waves; a far thicker one hides these.
    const chart = (short: number, middle: number, long: number) =>
      spectrum((nm) => (nm < 560 ? short : nm <= 600 ? middle : long));
    const across = (short: number, middle: number, long: number) => Array.from(chart(short, middle, long).values);
    const odd = {
      absorption: across(1, 0.03, 0),
      scattering: across(0, 0, 0.0001),
      black: chart(0, 0.5, 0),
      white: chart(0.8, 0.5, 0.1),
    };
    const contrast = (thickness: number) => {
      const over = (substrate: Spectrum) => filmSpectrum({ ...odd, thickness, substrate });
      return contrastRatio(over(odd.black), over(odd.white), { viewing });
    };
    const ratio = 0.6;
    expect([0, 5, 200, 1e6].map((thickness) => contrast(thickness) > ratio)).toEqual([false, true, false, true]);
    const { thickness } = hidingThickness(odd, { viewing, ratio, surface: 'none' });
    expect(contrast(thickness)).toBeCloseTo(ratio, 12);
    for (let share = 0; share < 0.995; share += 0.01) expect(contrast(share * thickness)).toBeLessThan(ratio);
  });

  test('is refused where no film has the ratio', () => {
    const path = 'contrast ratio';
    expect(() => hidingThickness(film, { viewing, ratio: 0.01, surface: 'none' })).toThrow(fault('no-solution', path));
    const none = new Array<number>(bands).fill(0);
    expect(() => hidingThickness({ ...film, scattering: none }, { viewing, surface: 'none' })).toThrow(
      fault('no-solution', path),
    );
    const clear = { ...film, scattering: none, absorption: none };
    expect(() => hidingThickness(clear, { viewing, surface: 'none' })).toThrow(fault('no-solution', path));
    // 0.8 is 8 · 0.1 to the bit, so that the chart's contrast is 1 / 8 to the bit; a film that doesn't scatter keeps it at any thickness.
    const eighth = { ...film, black: spectrum(() => 0.1), white: spectrum(() => 0.8) };
    expect(() => hidingThickness(eighth, { viewing, ratio: 0.125, surface: 'none' })).toThrow(
      expect.objectContaining({ code: 'no-solution', path, received: 0.125 }),
    );
    for (const K of [absorption, none]) {
      expect(() =>
        hidingThickness({ ...eighth, scattering: none, absorption: K }, { viewing, surface: 'none' }),
      ).toThrow(expect.objectContaining({ code: 'no-solution', path, received: 0.125 }));
    }
    for (const ratio of [0, 1, Number.NaN]) {
      expect(() => hidingThickness(film, { viewing, ratio, surface: 'none' })).toThrow(
        fault('invalid-option', 'options.ratio'),
      );
    }
  });
});

describe('spreading rate', () => {
  test('of a dry film counts the solids only: 50 µm of 40 % by volume were 125 µm wet', () => {
    expect(spreadingRate(50, { volumeSolids: 0.4 })).toBe(spreadingRate(125));
    expect(spreadingRate(125, { volumeSolids: 1 })).toBe(8);
  });

  test.each([0, -1, Infinity, Number.NaN])('is refused for a thickness of %d', (thickness) => {
    expect(() => spreadingRate(thickness)).toThrow(fault('out-of-range', 'thickness'));
  });

  test.each([0, -0.4, 40, Number.NaN])('is refused for solids of %d', (volumeSolids) => {
    expect(() => spreadingRate(50, { volumeSolids })).toThrow(fault('invalid-option', 'options.volumeSolids'));
  });
});
