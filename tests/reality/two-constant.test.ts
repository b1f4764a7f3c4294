import { expect, test } from 'vitest';
import { colorantAmount, fitColorantCoefficients } from '../../src/fits/index.js';
import { internalReflectance } from '../../src/strength/index.js';
import { amountOf, PAIRS, readingOf, surfaceOf, WHITE } from './single-constant.js';

// The mass share of each colorant in its stronger reduction, by two-constant theory from white, weaker reduction and mass tone. Measured oil
// paints, source in oil-paints.txt; figures are regression values of our own run.

const shares = PAIRS.map((pair) => {
  const surface = surfaceOf(pair);
  const [white, weaker, stronger, masstone] = [WHITE, pair.weaker, pair.stronger, pair.masstone].map((name) =>
    internalReflectance(readingOf(name, surface), surface),
  );
  const colorant = fitColorantCoefficients({
    white,
    masstone,
    reductions: [{ amount: amountOf(pair.weaker), spectrum: weaker }],
  });
  const found = colorantAmount(stronger, { colorant });
  const truth = amountOf(pair.stronger) / (1 + amountOf(pair.stronger));
  return { colorant: pair.colorant, factor: found.share / truth, codes: found.warnings.map(({ code }) => code) };
});

test('median error of the mass share is at most a factor of 1.2', () => {
  const errors = shares.map(({ factor }) => Math.abs(Math.log(factor))).sort((a, b) => a - b);
  expect(Math.exp((errors[5] + errors[6]) / 2)).toBeLessThanOrEqual(1.2);
});

test('no error beyond a factor of 1.3 is without a warning', () => {
  for (const { colorant, factor, codes } of shares) {
    if (Math.abs(Math.log(factor)) > Math.log(1.3)) expect(codes.length, colorant).toBeGreaterThan(0);
  }
});

test('regression: found over true mass share, and what is said of it', () => {
  const table = shares.map(({ colorant, factor, codes }) =>
    `${colorant} ${factor.toFixed(2)} ${codes.join(' ')}`.trim(),
  );
  expect(table).toMatchInlineSnapshot(`
    [
      "eosin in wax 1.57 lack-of-fit extrapolated",
      "eosin 1.29 lack-of-fit extrapolated",
      "eosin, lead, in wax 1.15 extrapolated",
      "cochineal 1.05 extrapolated",
      "minium 1.05 extrapolated",
      "viridian green 1.01 extrapolated",
      "ultramarine blue 0.74 lack-of-fit extrapolated",
      "cobalt blue 0.88 extrapolated",
      "prussian blue 0.95 lack-of-fit extrapolated",
      "chrome yellow 0.72 extrapolated",
      "cochineal, pale 1.02 lack-of-fit extrapolated",
      "prussian blue, pale 1.38 extrapolated",
    ]
  `);
});
