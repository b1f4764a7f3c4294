import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import { fitAmountExponent, reflectanceFromKOverS } from '../../src/strength/index.js';

const options = { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' } as const;
const flat = (ratio: number) =>
  createSpectrum({
    start: 400,
    step: 10,
    values: Array<number>(31).fill(reflectanceFromKOverS(ratio)),
    scale: 'fraction',
  });
const steps = (response: (amount: number) => number, amounts = [0.02, 0.05, 0.1, 0.3]) =>
  amounts.map((amount) => ({ amount, spectrum: flat(0.01 + response(amount)) }));
const white = flat(0.01);

describe('the exponent of a ladder', () => {
  test('that grows as a power of the amount is that power, without bounds to speak of', () => {
    const found = fitAmountExponent({ white, steps: steps((amount) => 3 * amount ** 0.85) }, options);
    expect(found.exponent).toBeCloseTo(0.85, 9);
    expect(found.high - found.low).toBeLessThan(1e-9);
    expect(found).toMatchObject({ basis: 'ladder', pairs: 3, level: 0.95, criterion: 'absorption-maximum' });
  });

  test('does not depend on the order of its steps', () => {
    const ladder = steps((amount) => (3 * amount) / (1 + amount));
    const found = fitAmountExponent({ white, steps: ladder }, options);
    expect(fitAmountExponent({ white, steps: [...ladder].reverse() }, options)).toEqual(found);
    // c / (1 + c s) has the local exponent 1 / (1 + c s): below 1, and lower for deeper steps.
    expect(found.exponent).toBeLessThan(1);
    expect(found.low).toBeLessThan(1 / 1.3);
  });
});

test.each([
  ['too-few-points', 'ladder.steps', steps((amount) => amount, [0.1, 0.2, 0.2])],
  ['out-of-range', 'ladder.steps[1].amount', steps((amount) => 1 + amount, [0.1, 0, 0.2])],
  // A ladder that saturates within its steps: from 1.58 the exponent falls to 0.
  ['not-increasing', 'ladder.steps', steps((amount) => Math.min(amount ** 1.5, 0.035), [0.05, 0.1, 0.2, 0.4])],
])('%s at %s', (code, path, ladder) => {
  expect(() => fitAmountExponent({ white, steps: ladder }, options)).toThrow(expect.objectContaining({ code, path }));
});
