import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../../src/colorimetry/index.js';
import { colorantAmount, fitColorantCoefficients } from '../../../src/fits/index.js';
import { reflectanceFromKOverS } from '../../../src/strength/index.js';

// Invented colorants: k and s at five wavelengths, S of the white = 1.
const K = [6, 3, 1, 0.2, 0.05];
const WHITE = [0.02, 0.015, 0.01, 0.01, 0.01];
const tint = (amount: number, s = 0.6, start = 400) =>
  createSpectrum({
    start,
    step: 20,
    values: K.map((k, i) => reflectanceFromKOverS((WHITE[i] + amount * k) / (1 + amount * s))),
    scale: 'fraction',
  });
const ladder = (s: number) => ({
  white: tint(0),
  reductions: [0.05, 0.2].map((amount) => ({ amount, spectrum: tint(amount, s) })),
});
const colorant = fitColorantCoefficients(ladder(0.6));

describe('the amount of a colorant in a tint', () => {
  test.each([0.01, 0.1, 0.5, 3])('%d per white is found again', (amount) => {
    const found = colorantAmount(tint(amount), { colorant });
    expect(found.amount / amount).toBeCloseTo(1, 6);
    expect(found.share).toBeCloseTo(amount / (1 + amount), 6);
    expect(found.residualReflectance).toBeLessThan(1e-6);
  });

  test('further than a factor of 4 from every reduction it says so', () => {
    expect(colorantAmount(tint(0.7), { colorant }).warnings).toEqual([]);
    expect(colorantAmount(tint(0.1), { colorant }).warnings).toEqual([]);
    const [warning] = colorantAmount(tint(1), { colorant }).warnings;
    expect(warning.code).toBe('extrapolated');
    expect(warning.figures?.factor).toBeCloseTo(5, 4);
  });

  test('another colorant is no amount of this one', () => {
    const values = [...tint(0.2).values].reverse();
    const other = createSpectrum({ start: 400, step: 20, values, scale: 'fraction' });
    const { residualReflectance, warnings } = colorantAmount(other, { colorant });
    expect(residualReflectance).toBeGreaterThan(0.1);
    expect(warnings.map(({ code }) => code)).toContain('lack-of-fit');
  });

  test('another grid is refused', () => {
    expect(() => colorantAmount(tint(0.2, 0.6, 420), { colorant })).toThrow(
      expect.objectContaining({ code: 'grid-mismatch', path: 'options.colorant' }),
    );
  });
});

test('a ladder that asks for neither absorption nor scattering beside a masstone has a finite residual', () => {
  // Reductions lighter than their white and a masstone, as bronzing leaves them.
  const flat = (value: number) => createSpectrum({ start: 400, step: 20, values: [value, value], scale: 'fraction' });
  const { residual } = fitColorantCoefficients({
    white: flat(0.5),
    reductions: [{ amount: 0.1, spectrum: flat(0.6) }],
    masstone: flat(0.02),
  });
  expect(residual).toBeGreaterThan(0);
  expect(residual).toBeLessThan(1);
});
