import { describe, expect, test } from 'vitest';
import { findRoot } from '../../src/strength/brent.js';
import { findMinimum } from '../../src/strength/golden-section.js';

describe('root', () => {
  test.each([
    // The root of cos x - x is the Dottie number (OEIS A003957), that of x³ - 2x - 5 Wallis's example (OEIS A007493).
    ['cos x = x', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x³ - 2x - 5', (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['√2', (x: number) => x * x - 2, 0, 100, Math.SQRT2],
    ['a steep step', (x: number) => Math.tanh(1e6 * (x - 0.3)), -1, 1, 0.3],
    ['at the lower end', (x: number) => x, 0, 1, 0],
    ['at the upper end', (x: number) => x - 1, 0, 1, 1],
    ['falling', (x: number) => Math.exp(-x) - 0.5, 0, 50, Math.LN2],
  ])('%s', (_, f, low, high, root) => {
    expect(Math.abs(findRoot(f, low, high) - root)).toBeLessThanOrEqual(1e-14);
  });

  test('within the tolerance that was asked for', () => {
    expect(Math.abs(findRoot((x) => x ** 3 - 2, 0, 2, 1e-6) - Math.cbrt(2))).toBeLessThanOrEqual(1e-6);
  });
});

describe('minimum', () => {
  test.each([
    ['a parabola through zero', (x: number) => (x - 0.7) ** 2, 0.7],
    ['a kink', (x: number) => Math.abs(x - 1.3), 1.3],
    ['lopsided', (x: number) => x - Math.log(x), 1],
  ])('%s', (_, f, place) => {
    // A smooth minimum above zero is known to the square root of a double's precision only.
    expect(Math.abs(findMinimum(f, 0.1, 3) - place)).toBeLessThanOrEqual(3e-8);
  });
});
