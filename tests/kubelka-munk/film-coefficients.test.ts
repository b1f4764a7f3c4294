import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createSpectrum, type Spectrum } from '../../src/colorimetry/index.js';
import {
  type FilmPair,
  filmCoefficientSpectra,
  filmCoefficientSpectraFromReflectivity,
  filmCoefficients,
  filmCoefficientsFromReflectivity,
  filmReflectance,
  filmSpectrum,
} from '../../src/strength/index.js';
import { exactCoefficients, relativeError } from './exact-film.js';

const SEED = 20260302;
const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const flat = (...values: number[]): Spectrum => createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
const power = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true }).map((x) => 10 ** x);

function read(absorption: number, scattering: number, black: number, white: number, thickness = 1): FilmPair {
  const over = (substrate: number) => filmReflectance({ absorption, scattering, thickness, substrate });
  return { overBlack: over(black), overWhite: over(white), black, white, thickness };
}

describe('K and S from readings over black and white', () => {
  test(`are exact for the readings as given, nearly clear to nearly opaque (seed ${SEED})`, () => {
    let compared = 0;
    fc.assert(
      fc.property(
        power(-6, 3),
        power(-6, 3),
        fc.constantFrom(0, 0.003, 0.05),
        fc.constantFrom(0.7, 0.85, 1),
        (k, s, B, W) => {
          const pair = read(k, s, B, W);
          if (pair.overWhite <= pair.overBlack) return;
          const exact = exactCoefficients(pair.overBlack, pair.overWhite, B, W);
          if (!(exact.kx.toNumber() > 0 && exact.sx.toNumber() > 0)) return;
          compared++;
          const found = filmCoefficients(pair);
          expect(relativeError(found.absorption, exact.kx)).toBeLessThan(2e-14);
          expect(relativeError(found.scattering, exact.sx)).toBeLessThan(2e-14);
          expect(relativeError(found.opaqueReflectance ?? Number.NaN, exact.opaque)).toBeLessThan(2e-14);
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(200);
  });

  test(`give back the K and S that a film was made from (seed ${SEED})`, () => {
    fc.assert(
      fc.property(power(-3, 0.3), power(-2, 0.5), power(-1, 2), (k, s, thickness) => {
        const found = filmCoefficients(read(k / thickness, s / thickness, 0.01, 0.82, thickness));
        expect(found.absorption * thickness).toBeCloseTo(k, 9);
        expect(found.scattering * thickness).toBeCloseTo(s, 9);
      }),
      { seed: SEED },
    );
  });

  test('hold where nothing absorbs, nothing scatters, or neither', () => {
    const white = filmCoefficients(read(0, 3, 0.02, 0.8));
    expect(white.absorption).toBeCloseTo(0, 14);
    expect(white.scattering).toBeCloseTo(3, 12);
    expect(white.opaqueReflectance).toBeCloseTo(1, 7);
    const lacquer = filmCoefficients(read(0.4, 0, 0.02, 0.8));
    expect(lacquer.absorption).toBeCloseTo(0.4, 14);
    expect(lacquer.scattering).toBeCloseTo(0, 14);
    const clear = filmCoefficients(read(0, 0, 0.02, 0.8));
    expect([clear.absorption, clear.scattering, clear.opaqueReflectance]).toEqual([0, 0, undefined]);
    for (const film of [white, lacquer, clear]) expect(film.warnings).toEqual([]);
  });

  test('can be fed straight back into the film', () => {
    for (const [k, s] of [
      [0, 1],
      [1, 0],
      [0, 0],
      [1e-9, 2],
      [3, 1e-9],
    ]) {
      const pair = read(k, s, 0.03, 0.9);
      const found = filmCoefficients(pair);
      expect(filmReflectance({ ...found, thickness: 1, substrate: 0.03 })).toBeCloseTo(pair.overBlack, 12);
      expect(filmReflectance({ ...found, thickness: 1, substrate: 0.9 })).toBeCloseTo(pair.overWhite, 12);
    }
  });

  test('note how little a nearly opaque film tells', () => {
    const [warning] = filmCoefficients(read(0.2, 16, 0.02, 0.8)).warnings;
    expect(warning.code).toBe('nearly-opaque');
    // an error of 0.001 moves S by about 0.001 / (2 bSX (Rw - Rb))
    const pair = read(0.2, 16, 0.02, 0.8);
    const moved = filmCoefficients({ ...pair, overWhite: pair.overWhite - 0.001 }).scattering / 16 - 1;
    expect(warning.message).toContain(`${Math.round(100 * Math.abs(moved))} %`);
  });

  test('take an absorption or a scattering that noise carries below zero as 0, and say so', () => {
    const pair = read(0, 1, 0.02, 0.8);
    const noisy = filmCoefficients({ ...pair, overWhite: pair.overWhite + 0.002 });
    expect(noisy.absorption).toBe(0);
    expect(noisy.warnings).toMatchObject([{ code: 'negative-absorption' }]);
    expect(noisy.warnings[0].message).toContain('0.0020');
    const lacquer = read(0.3, 0, 0.02, 0.8);
    const dark = filmCoefficients({ ...lacquer, overBlack: lacquer.overBlack - 0.001 });
    expect(dark.scattering).toBe(0);
    expect(dark.warnings).toMatchObject([{ code: 'negative-scattering' }]);
  });

  test.each([
    // readings of the bare chart, each a little too far out: K and S both come out below zero
    ['both', { overBlack: 0.019, overWhite: 0.803, black: 0.02, white: 0.8 }, 'negative-absorption', 0.003],
    // over a perfect white, a film that is too dark over black only: K X is zero to the bit
    ['scattering', { overBlack: 0.018, overWhite: 1, black: 0.02, white: 1 }, 'negative-scattering', 0.002],
  ])('take a clear film as clear whose noise asks for a negative %s', (_, readings, code, missed) => {
    const { absorption, scattering, opaqueReflectance, warnings } = filmCoefficients({ ...readings, thickness: 1 });
    expect([absorption, scattering, opaqueReflectance]).toEqual([0, 0, undefined]);
    expect(warnings).toMatchObject([{ code }]);
    expect(warnings[0]).not.toHaveProperty('path');
    expect(warnings[0].message).toContain(`a negative ${code.slice('negative-'.length)}, `);
    expect(warnings[0].message).toContain(`misses the readings by ${missed.toFixed(4)}.`);
  });

  test('gather the wavelengths of each kind of warning, with the largest of their sizes', () => {
    // Absorption below zero at 400 and 410 nm, by more at 410; scattering below zero at 420; at 430 and 440 nm nearly opaque.
    const white = read(0, 1, 0.02, 0.8);
    const lacquer = read(0.3, 0, 0.02, 0.8);
    const near = read(0.2, 16, 0.02, 0.8);
    const { warnings } = filmCoefficientSpectra({
      overBlack: flat(white.overBlack, white.overBlack, lacquer.overBlack - 0.001, near.overBlack, near.overBlack),
      overWhite: flat(
        white.overWhite + 0.002,
        white.overWhite + 0.004,
        lacquer.overWhite,
        near.overWhite,
        near.overBlack + 0.0005,
      ),
      black: flat(0.02, 0.02, 0.02, 0.02, 0.02),
      white: flat(0.8, 0.8, 0.8, 0.8, 0.8),
      thickness: 1,
    });
    expect(warnings).toEqual([
      {
        code: 'negative-absorption',
        path: '400 nm, 410 nm',
        message: expect.stringMatching(/a negative absorption, .* by 0\.0040\.$/),
      },
      {
        code: 'negative-scattering',
        path: '420 nm',
        message: expect.stringMatching(/a negative scattering, .* by 0\.0010\.$/),
      },
      // an error of 0.001 is twice the difference that is left at 440 nm
      {
        code: 'nearly-opaque',
        path: '430 nm, 440 nm',
        message: expect.stringMatching(/as much as itself or more\.$/),
      },
    ]);
  });

  test('are refused for an opaque film and for readings that no film gives', () => {
    const pair = { overBlack: 0.3, overWhite: 0.3, black: 0, white: 0.8, thickness: 1 };
    expect(() => filmCoefficients(pair)).toThrow(fault('film-opaque', 'film'));
    expect(() => filmCoefficients({ ...pair, overBlack: 0.6 })).toThrow(/swapped/);
    // less than a miss that is forgiven is no sign of swapped readings
    for (const overBlack of [0.3, 0.305]) {
      expect(() => filmCoefficients({ ...pair, overBlack })).toThrow(/Use a thinner film/);
    }
    expect(() => filmCoefficients({ ...pair, overBlack: 0.1, overWhite: 0.95 })).toThrow(fault('no-solution', 'film'));
    expect(() => filmCoefficients({ ...pair, overBlack: 0, overWhite: 0.85 })).toThrow(fault('no-solution', 'film'));
    expect(() => filmCoefficients({ ...pair, overBlack: 0.02, black: 0.1, overWhite: 0.9 })).toThrow(
      fault('no-solution', 'film'),
    );
    expect(() => filmCoefficients({ ...pair, overWhite: 1.1 })).toThrow(fault('reflectance-out-of-range', 'overWhite'));
    expect(() => filmCoefficients({ ...pair, overBlack: Number.NaN })).toThrow(
      fault('reflectance-out-of-range', 'overBlack'),
    );
    expect(() => filmCoefficients({ ...pair, white: 0 })).toThrow(fault('out-of-range', 'white'));
    expect(() => filmCoefficients({ ...pair, thickness: 0 })).toThrow(fault('out-of-range', 'thickness'));
    expect(() => filmCoefficients({ ...pair, thickness: Infinity })).toThrow(fault('out-of-range', 'thickness'));
  });

  test('as spectra equal the single values and name wavelengths', () => {
    const black = flat(0.02, 0.03, 0.04);
    const white = flat(0.8, 0.82, 0.84);
    const film = { absorption: [0.01, 0.3, 2], scattering: [0.8, 0.9, 1], thickness: 1 };
    const overBlack = filmSpectrum({ ...film, substrate: black });
    const overWhite = filmSpectrum({ ...film, substrate: white });
    const found = filmCoefficientSpectra({ overBlack, overWhite, black, white, thickness: 1 });
    const single = filmCoefficients(read(0.3, 0.9, 0.03, 0.82));
    expect(found.absorption[1]).toBe(single.absorption);
    expect(found.scattering[1]).toBe(single.scattering);
    expect(found.opaqueReflectance?.values[1]).toBe(single.opaqueReflectance);

    const opaque = { overBlack: flat(0.5, 0.3, 0.3), overWhite: flat(0.6, 0.3, 0.3), black, white, thickness: 1 };
    expect(() => filmCoefficientSpectra(opaque)).toThrow(fault('film-opaque', 'film at 410 nm, 420 nm'));
    const short = { ...opaque, white: flat(0.8, 0.8) };
    expect(() => filmCoefficientSpectra(short)).toThrow(fault('grid-mismatch', 'white'));
    const clear = filmCoefficientSpectra({
      ...opaque,
      overBlack: flat(0.02, 0.3, 0.3),
      overWhite: flat(0.8, 0.5, 0.5),
    });
    expect(clear.opaqueReflectance).toBeUndefined();
    const noisy = filmCoefficientSpectra({
      ...opaque,
      overBlack: flat(0.5, 0.5, 0.5),
      overWhite: flat(0.834, 0.849, 0.7),
    });
    expect(noisy.warnings).toMatchObject([{ code: 'negative-absorption', path: '400 nm, 410 nm' }]);
  });
});

describe('K and S from one reading and the opaque layer', () => {
  test(`give back the K and S that a film was made from (seed ${SEED})`, () => {
    fc.assert(
      fc.property(power(-9, 1), power(-3, 0.3), fc.constantFrom(0, 0.05, 1), (k, s, substrate) => {
        const opaqueReflectance = filmReflectance({ absorption: k, scattering: s, thickness: Infinity, substrate });
        const reading = filmReflectance({ absorption: k, scattering: s, thickness: 1, substrate });
        if (Math.abs(reading - opaqueReflectance) < 1e-4 || Math.abs(reading - substrate) < 1e-4) return;
        const found = filmCoefficientsFromReflectivity({ reading, substrate, opaqueReflectance, thickness: 1 });
        expect(found.scattering / s).toBeCloseTo(1, 9);
        expect(Math.abs(found.absorption - k)).toBeLessThan(1e-9 * (k + s));
      }),
      { seed: SEED },
    );
  });

  test('agree with those from black and white', () => {
    const pair = read(0.4, 1.3, 0.02, 0.81);
    const both = filmCoefficients(pair);
    const opaqueReflectance = both.opaqueReflectance ?? Number.NaN;
    const one = filmCoefficientsFromReflectivity({
      reading: pair.overBlack,
      substrate: 0.02,
      opaqueReflectance,
      thickness: 1,
    });
    expect(one.absorption).toBeCloseTo(both.absorption, 13);
    expect(one.scattering).toBeCloseTo(both.scattering, 13);
  });

  test('hold for a lacquer and for a film that changes nothing', () => {
    const lacquer = { reading: 0.8 * Math.exp(-1), substrate: 0.8, opaqueReflectance: 0, thickness: 2 };
    expect(filmCoefficientsFromReflectivity(lacquer)).toMatchObject({ scattering: 0 });
    expect(filmCoefficientsFromReflectivity(lacquer).absorption).toBeCloseTo(0.25, 15);
    const none = filmCoefficientsFromReflectivity({
      reading: 0.8,
      substrate: 0.8,
      opaqueReflectance: 0.3,
      thickness: 2,
    });
    expect(none).toMatchObject({ absorption: 0, scattering: 0, opaqueReflectance: 0.3, warnings: [] });
  });

  test('are refused where the reading says nothing, naming the place', () => {
    const film = { reading: 0.5, substrate: 0, opaqueReflectance: 0.5, thickness: 1 };
    expect(() => filmCoefficientsFromReflectivity(film)).toThrow(fault('film-opaque', 'film'));
    expect(() => filmCoefficientsFromReflectivity({ ...film, reading: 0.6 })).toThrow(fault('no-solution', 'reading'));
    expect(() => filmCoefficientsFromReflectivity({ ...film, substrate: 0.5 })).toThrow(
      fault('no-solution', 'substrate'),
    );
    expect(() => filmCoefficientsFromReflectivity({ ...film, reading: -1 })).toThrow(
      fault('reflectance-out-of-range', 'reading'),
    );
    const spectra = { reading: flat(0.4, 0.5), substrate: flat(0, 0), opaqueReflectance: flat(0.5, 0.5), thickness: 1 };
    expect(() => filmCoefficientSpectraFromReflectivity(spectra)).toThrow(fault('film-opaque', 'film at 410 nm'));
    for (const path of ['substrate', 'opaqueReflectance']) {
      expect(() => filmCoefficientSpectraFromReflectivity({ ...spectra, [path]: flat(0, 0, 0) })).toThrow(
        fault('grid-mismatch', path),
      );
    }
  });

  test('as spectra equal the single values', () => {
    const spectra = { reading: flat(0.4, 0.3), substrate: flat(0, 0), opaqueReflectance: flat(0.5, 0.6), thickness: 3 };
    const found = filmCoefficientSpectraFromReflectivity(spectra);
    const single = filmCoefficientsFromReflectivity({
      reading: 0.3,
      substrate: 0,
      opaqueReflectance: 0.6,
      thickness: 3,
    });
    expect([found.absorption[1], found.scattering[1]]).toEqual([single.absorption, single.scattering]);
    expect(found.opaqueReflectance?.values[1]).toBe(0.6);
    expect(found.warnings).toEqual([]);
  });
});

test('a lacquer over a perfect black absorbs and does not scatter', () => {
  // Without scattering the light passes the film twice: overWhite = white exp(-2 K x), so exp(-1) is K = 0.5 at x = 1.
  const { absorption, scattering } = filmCoefficients({
    overBlack: 0,
    overWhite: 0.8 * Math.exp(-1),
    black: 0,
    white: 0.8,
    thickness: 1,
  });
  expect(absorption).toBeCloseTo(0.5, 12);
  expect(scattering).toBe(0);
});
