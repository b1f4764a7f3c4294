import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, type Spectrum } from '../../src/colorimetry/index.js';
import {
  contrastRatio,
  filmSpectrum,
  hidingThickness,
  measuredReflectance,
  spreadingRate,
} from '../../src/strength/index.js';

const fault = (code: string, place: string) => expect.objectContaining({ code, place });
const viewing = D65_10;
const bands = 31;
const spectrum = (at: (nm: number) => number): Spectrum =>
  createSpectrum({
    start: 400,
    interval: 10,
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
    const short = createSpectrum({ start: 400, interval: 10, values: [0.1, 0.1], scale: 'fraction' });
    expect(() => contrastRatio(black, short, { viewing })).toThrow(fault('grid-mismatch', 'overWhite'));
  });
});

describe('hiding thickness', () => {
  const film = { absorption, scattering, black, white };

  test('is where the film has the ratio asked for', () => {
    for (const ratio of [0.02, 0.5, 0.95, 0.98, 0.9999]) {
      const found = hidingThickness(film, { viewing, ratio });
      const over = (substrate: Spectrum) => filmSpectrum({ ...film, ...found, substrate });
      expect(contrastRatio(over(black), over(white), { viewing })).toBeCloseTo(ratio, 12);
    }
    expect(hidingThickness(film, { viewing }).contrastRatio).toBe(0.98);
  });

  test('with a surface is where the measured film has the ratio', () => {
    const surface = { external: 0.04, internal: 0.6, specular: 'excluded' } as const;
    const { thickness } = hidingThickness(film, { viewing, surface });
    const over = (substrate: Spectrum) => measuredReflectance(filmSpectrum({ ...film, thickness, substrate }), surface);
    expect(contrastRatio(over(black), over(white), { viewing })).toBeCloseTo(0.98, 12);
    expect(thickness).not.toBeCloseTo(hidingThickness(film, { viewing }).thickness, 2);
  });

  test('scales with the unit of thickness', () => {
    const perMillimetre = {
      ...film,
      absorption: absorption.map((k) => 1e3 * k),
      scattering: scattering.map((s) => 1e3 * s),
    };
    const ratio = hidingThickness(film, { viewing }).thickness / hidingThickness(perMillimetre, { viewing }).thickness;
    expect(ratio).toBeCloseTo(1000, 9);
  });

  test('is found just above the contrast of the bare chart', () => {
    expect(hidingThickness(film, { viewing, ratio: 0.0125 * (1 + 1e-9) }).thickness).toBeGreaterThan(0);
  });

  test('is refused where no film has the ratio', () => {
    const place = 'contrast ratio';
    expect(() => hidingThickness(film, { viewing, ratio: 0.01 })).toThrow(fault('no-solution', place));
    const none = new Array<number>(bands).fill(0);
    expect(() => hidingThickness({ ...film, scattering: none }, { viewing })).toThrow(fault('no-solution', place));
    const clear = { ...film, scattering: none, absorption: none };
    expect(() => hidingThickness(clear, { viewing })).toThrow(fault('no-solution', place));
    for (const ratio of [0, 1, Number.NaN]) {
      expect(() => hidingThickness(film, { viewing, ratio })).toThrow(fault('invalid-option', 'options.ratio'));
    }
  });
});

describe('spreading rate', () => {
  test('is refused for no thickness and for impossible solids', () => {
    expect(() => spreadingRate(0)).toThrow(fault('out-of-range', 'thickness'));
    expect(() => spreadingRate(50, { volumeSolids: 40 })).toThrow(fault('invalid-option', 'options.volumeSolids'));
  });
});
