import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../src/colorimetry/index.js';
import { filmReflectance, filmSpectrum, reflectanceFromKOverS } from '../../src/strength/index.js';
import { absoluteError, exactReflectance } from './exact-film.js';

const SEED = 20260301;

const film = (absorption: number, scattering: number, thickness: number, substrate: number) =>
  filmReflectance({ absorption, scattering, thickness, substrate });

const flat = (value: number) =>
  createSpectrum({ start: 400, step: 100 / 5, values: [value, value], scale: 'fraction' });

describe('a film over a substrate', () => {
  const K = [0, 1e-15, 1e-8, 1e-3, 1, 20, 1e5, 1e10];
  const S = [0, 1e-15, 1e-7, 1e-2, 1, 25, 1e4, 1e6];
  const Rg = [0, 1e-9, 0.04, 0.5, 0.8, 1 - 1e-12, 1];

  test('is exact to 1e-12 at every corner: clear, absorbing, scattering, opaque, dark', () => {
    let worst = 0;
    for (const k of K)
      for (const s of S)
        for (const g of Rg) worst = Math.max(worst, absoluteError(film(k, s, 1, g), exactReflectance(k, s, 1, g)));
    expect(worst).toBeLessThan(1e-15);
  });

  test(`is exact to 1e-12 for any K, S, X and substrate (seed ${SEED})`, () => {
    const power = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true }).map((x) => 10 ** x);
    fc.assert(
      fc.property(
        power(-15, 10),
        power(-15, 6),
        power(-6, 3),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (k, s, x, g) => {
          expect(absoluteError(film(k, s, x, g), exactReflectance(k, s, x, g))).toBeLessThan(1e-14);
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });

  test('without thickness, or without absorption and scattering, leaves the substrate', () => {
    expect(film(1, 2, 0, 0.3)).toBe(0.3);
    expect(film(0, 0, 5, 0.3)).toBe(0.3);
    expect(film(0, 0, Infinity, 0.3)).toBe(0.3);
  });

  test('of any thickness ends at the reflectance of the opaque layer', () => {
    for (const ratio of [1e-15, 0.01, 1, 1e8]) {
      expect(film(ratio, 1, Infinity, 0.7)).toBeCloseTo(reflectanceFromKOverS(ratio), 14);
      expect(film(ratio, 1, 1e300, 0)).toBeCloseTo(reflectanceFromKOverS(ratio), 14);
    }
    expect(film(0, 1, Infinity, 0)).toBe(1);
    expect(film(0, 1, Infinity, 1)).toBe(1);
    expect(film(1, 0, Infinity, 1)).toBe(0);
  });

  test('that does not scatter dims the substrate twice, as Beer and Lambert say', () => {
    expect(film(0.5, 0, 2, 0.8)).toBeCloseTo(0.8 * Math.exp(-2), 15);
  });

  test(`in two coats equals one coat of the joint thickness (seed ${SEED})`, () => {
    const part = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(part, part, part, part, fc.double({ min: 0, max: 1, noNaN: true }), (k, s, first, second, g) => {
        expect(film(k, s, second, film(k, s, first, g))).toBeCloseTo(film(k, s, first + second, g), 13);
      }),
      { seed: SEED },
    );
  });

  test('never leaves 0 to 1 and is never NaN, at the ends of a double too', () => {
    const extremes = [0, 5e-324, 1e-300, 1e-15, 1, 1e15, 1e300, Number.MAX_VALUE];
    for (const k of extremes)
      for (const s of extremes)
        for (const x of [...extremes, Infinity])
          for (const g of [0, 5e-324, 0.5, 1]) {
            const R = film(k, s, x, g);
            expect(R >= 0 && R <= 1, `K ${k} S ${s} X ${x} Rg ${g}: ${R}`).toBe(true);
          }
  });

  test('as a spectrum equals the single values to the bit', () => {
    const spectrum = filmSpectrum({ absorption: [0.1, 2], scattering: [1, 0.5], thickness: 0.7, substrate: flat(0.8) });
    expect(Array.from(spectrum.values)).toEqual([film(0.1, 1, 0.7, 0.8), film(2, 0.5, 0.7, 0.8)]);
  });

  test('refuses what is no film, naming the place', () => {
    const fault = (code: string, path: string) => expect.objectContaining({ code, path });
    expect(() => film(-1, 1, 1, 0)).toThrow(fault('out-of-range', 'absorption'));
    expect(() => film(1, Number.NaN, 1, 0)).toThrow(fault('out-of-range', 'scattering'));
    expect(() => film(1, Infinity, 1, 0)).toThrow(fault('out-of-range', 'scattering'));
    expect(() => film(1, 1, -1, 0)).toThrow(fault('out-of-range', 'thickness'));
    expect(() => film(1, 1, 1, 1.2)).toThrow(fault('reflectance-out-of-range', 'substrate'));
    const spectra = { absorption: [1, -1], scattering: [1, 1], thickness: 1, substrate: flat(0.5) };
    expect(() => filmSpectrum(spectra)).toThrow(fault('out-of-range', 'absorption at 420 nm'));
    expect(() => filmSpectrum({ ...spectra, absorption: [1] })).toThrow(fault('wrong-length', 'length of absorption'));
  });
});
