import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../../src/colorimetry/index.js';
import { type ColorantLadder, fitColorantCoefficients, twoConstantStrength } from '../../../src/fits/index.js';
import { reflectanceFromKOverS } from '../../../src/strength/index.js';
import { noiseFrom } from '../noise.js';
import { RED, spectrumOf, WHITE } from './invented-colorants.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260306;
const K = RED.map((k) => 4 * k);
const S = RED.map((_, i) => 0.5 + 0.03 * i);
const mixture = (amount: number, s: readonly number[] = S) =>
  spectrumOf(WHITE.map((white, i) => (white + amount * K[i]) / (1 + amount * s[i])));
const white = spectrumOf(WHITE);
const masstone = spectrumOf(K.map((k, i) => k / S[i]));
const ladder: ColorantLadder = {
  white,
  reductions: [0.02, 0.1, 0.4].map((amount) => ({ amount, spectrum: mixture(amount) })),
  masstone,
};

describe('K and S of a colorant from a ladder', () => {
  test('give back those the ladder was made from', () => {
    const found = fitColorantCoefficients(ladder);
    found.absorption.forEach((k, i) => void expect(k / K[i]).toBeCloseTo(1, 7));
    found.scattering.forEach((s, i) => void expect(s / S[i]).toBeCloseTo(1, 7));
    expect(found.residual).toBeLessThan(1e-12);
    expect(found.warnings).toEqual([]);
  });

  test(`stay near them with an error of 0.0005 in every reading (seed ${SEED})`, () => {
    const noise = noiseFrom(SEED);
    const read = (spectrum: typeof white) =>
      createSpectrum({
        start: 400,
        step: 10,
        values: spectrum.values.map((R) => R + 5e-4 * noise()),
        scale: 'fraction',
      });
    const found = fitColorantCoefficients({
      white,
      reductions: ladder.reductions.map(({ amount, spectrum }) => ({ amount, spectrum: read(spectrum) })),
      masstone: read(masstone),
    });
    const strongest = K.indexOf(Math.max(...K));
    expect(found.absorption[strongest] / K[strongest]).toBeCloseTo(1, 1);
    expect(found.residual).toBeLessThan(5e-4);
  });

  test('are taken as 0 where the ladder asks for less, and noted', () => {
    const brighter = [0.05, 0.2].map((amount) => ({
      amount,
      spectrum: spectrumOf(WHITE.map((w, i) => w + amount * K[i] * (1 + 0.2 * amount))),
    }));
    const found = fitColorantCoefficients({ white, reductions: brighter });
    expect(Math.max(...found.scattering)).toBe(0);
    expect(found.warnings).toMatchObject([{ code: 'negative-scattering' }]);
    const whiter = [0.05, 0.2].map((amount) => ({
      amount,
      spectrum: spectrumOf(WHITE.map((w) => w * (1 - 0.5 * amount - amount * amount))),
    }));
    expect(fitColorantCoefficients({ white, reductions: whiter }).warnings).toContainEqual(
      expect.objectContaining({ code: 'negative-absorption' }),
    );
  });

  test('are refused where the ladder can not tell them, naming the place', () => {
    const one = { white, reductions: ladder.reductions.slice(0, 1) };
    const path = 'ladder.reductions';
    expect(() => fitColorantCoefficients(one)).toThrow(fault('too-few-points', path));
    expect(() => fitColorantCoefficients({ white, reductions: [], masstone })).toThrow(fault('too-few-points', path));
    const alike = { white, reductions: [0.1, 0.2].map((amount) => ({ amount, spectrum: mixture(0.1) })) };
    expect(() => fitColorantCoefficients(alike)).toThrow(fault('ill-conditioned', 'ladder at 400 nm'));
    const none = { white, reductions: [{ amount: 0, spectrum: mixture(0.1) }] };
    expect(() => fitColorantCoefficients(none)).toThrow(fault('out-of-range', 'ladder.reductions[0].amount'));
    const short = createSpectrum({ start: 400, step: 10, values: [0.5, 0.5], scale: 'fraction' });
    expect(() => fitColorantCoefficients({ ...ladder, masstone: short })).toThrow(
      fault('grid-mismatch', 'ladder.masstone'),
    );
    const dark = createSpectrum({ start: 400, step: 10, values: K.map(() => 0), scale: 'fraction' });
    expect(() => fitColorantCoefficients({ ...ladder, masstone: dark })).toThrow(
      fault('zero-reflectance', 'ladder.masstone at 400 nm'),
    );
  });
});

describe('coefficients that went through JSON', () => {
  const colorant = fitColorantCoefficients(ladder);
  const again = JSON.parse(JSON.stringify(colorant));

  test('are what they were, and give the same strength', () => {
    expect(again).toEqual(colorant);
    expect(again).toMatchObject({ kind: 'colorant-coefficients', version: 1 });
    const found = twoConstantStrength(mixture(0.3), mixture(0.36), { colorant: again });
    expect(found).toEqual(twoConstantStrength(mixture(0.3), mixture(0.36), { colorant }));
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  test.each([
    ['wrong-type', 'options.colorant', { ...again, kind: undefined }],
    ['wrong-type', 'options.colorant', { ...again, version: 2 }],
    ['wrong-length', 'options.colorant.scattering', { ...again, scattering: [1] }],
    ['not-finite', 'options.colorant.absorption[1]', { ...again, absorption: [1, null, 2] }],
  ])('are refused with %s at %s', (code, path, given) => {
    expect(() => twoConstantStrength(mixture(0.3), mixture(0.36), { colorant: given })).toThrow(fault(code, path));
  });
});

describe('strength by two constants', () => {
  const colorant = fitColorantCoefficients(ladder);

  test('is the ratio of amounts, which the single constant misses where the colorant scatters', () => {
    const found = twoConstantStrength(mixture(0.3), mixture(0.36), { colorant });
    expect(found.percent).toBeCloseTo(120, 5);
    expect(found.wavelength).toBe(530);
    expect(found.effectiveAmounts.reference).toBeCloseTo(0.3, 6);
    // single constant: F ∝ c / (1 + c s), here with s = 0.89 at 530 nm
    expect(found.singleConstantPercent).toBeLessThan(117);
    expect(found).toMatchObject({ differs: true, warnings: [{ code: 'theories-differ' }] });
  });

  test('agrees with the single constant in a weak tint', () => {
    const found = twoConstantStrength(mixture(0.002), mixture(0.0024), { colorant });
    expect(found.percent).toBeCloseTo(120, 5);
    expect(found.singleConstantPercent).toBeCloseTo(120, 0);
    expect(found).toMatchObject({ differs: false, warnings: [] });
  });

  test('is refused where it has no value, naming the place', () => {
    const strong = spectrumOf(K.map((k, i) => (1.1 * k) / S[i]));
    const tint = mixture(0.1);
    expect(() => twoConstantStrength(tint, strong, { colorant })).toThrow(
      fault('no-solution', 'K/S of the trial at 530 nm'),
    );
    expect(() => twoConstantStrength(white, tint, { colorant })).toThrow(
      expect.objectContaining({ code: 'no-absorption' }),
    );
    expect(() => twoConstantStrength(tint, tint, { colorant, notableDifference: -1 })).toThrow(
      fault('invalid-option', 'options.notableDifference'),
    );
    const flat = (start: number) =>
      createSpectrum({ start, step: 10, values: [1, 2].map(() => reflectanceFromKOverS(0.1)), scale: 'fraction' });
    expect(() => twoConstantStrength(flat(400), flat(400), { colorant })).toThrow(
      fault('grid-mismatch', 'options.colorant'),
    );
    const infrared = { ...colorant, start: 750, white: [0, 0], absorption: [1, 1], scattering: [0, 0] };
    expect(() => twoConstantStrength(flat(750), flat(750), { colorant: infrared })).toThrow(
      fault('grid-invalid', 'reference'),
    );
  });
});
