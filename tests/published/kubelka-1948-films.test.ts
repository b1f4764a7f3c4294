import { describe, expect, test } from 'vitest';
import { filmCoefficients, filmReflectance, kOverS, reflectanceFromKOverS } from '../../src/strength/index.js';

// P. Kubelka (1948), New contributions to the optics of intensely light-scattering materials, part I, J. Opt. Soc. Am. 38,
// 448-457: the paper's relations between R0, R, Rg, T, a, b and SX, none of which the film functions are written in.

const FILMS = [
  { absorption: 0.02, scattering: 1.4, thickness: 0.9 },
  { absorption: 0.6, scattering: 0.8, thickness: 1.5 },
  { absorption: 2.5, scattering: 0.4, thickness: 0.3 },
];
const arcoth = (x: number) => Math.log((x + 1) / (x - 1)) / 2;

describe.each(FILMS)('film with K $absorption, S $scattering, X $thickness', (film) => {
  const SX = film.scattering * film.thickness;
  const a = 1 + film.absorption / film.scattering;
  const b = Math.sqrt(a * a - 1);
  const R0 = filmReflectance({ ...film, substrate: 0 });
  const T = b / (a * Math.sinh(b * SX) + b * Math.cosh(b * SX));

  test('over black reads 1 / (a + b coth bSX)', () => {
    expect(R0).toBeCloseTo(1 / (a + b / Math.tanh(b * SX)), 14);
  });

  test('has T² = (a - R0)² - b²', () => expect(T * T).toBeCloseTo((a - R0) ** 2 - b * b, 13));

  test.each([0.05, 0.8, 1])('over a substrate of %f reads R0 + T² Rg / (1 - R0 Rg)', (substrate) => {
    expect(filmReflectance({ ...film, substrate })).toBeCloseTo(R0 + (T * T * substrate) / (1 - R0 * substrate), 14);
  });

  test('over black and over a substrate Rg has a = ½ (R + (R0 - R + Rg) / (R0 Rg))', () => {
    const Rg = 0.8;
    const R = filmReflectance({ ...film, substrate: Rg });
    expect(a).toBeCloseTo((R + (R0 - R + Rg) / (R0 * Rg)) / 2, 11);
    const found = filmCoefficients({ overBlack: R0, overWhite: R, black: 0, white: Rg, thickness: film.thickness });
    expect(1 + found.absorption / found.scattering).toBeCloseTo((R + (R0 - R + Rg) / (R0 * Rg)) / 2, 11);
  });

  test('has SX = (arcoth((a - R) / b) - arcoth((a - Rg) / b)) / b over a substrate darker than R infinity', () => {
    const R = filmReflectance({ ...film, substrate: 0.03 });
    expect((arcoth((a - R) / b) - arcoth((a - 0.03) / b)) / b).toBeCloseTo(SX, 12);
  });

  test('ends in R infinity = a - b, whose K/S is (1 - R)² / 2R', () => {
    const opaque = filmReflectance({ ...film, thickness: Infinity, substrate: 0.5 });
    expect(opaque).toBeCloseTo(a - b, 14);
    expect(kOverS(opaque)).toBeCloseTo(a - 1, 12);
    expect(reflectanceFromKOverS(a - 1)).toBeCloseTo(opaque, 14);
  });
});

test.each([0.01, 1, 4, 99])('a film that only scatters reads SX / (1 + SX) over black, SX = %f', (SX) => {
  expect(filmReflectance({ absorption: 0, scattering: SX, thickness: 1, substrate: 0 })).toBeCloseTo(SX / (1 + SX), 15);
});
