import { describe, expect, test } from 'vitest';
import { findRoot } from '../../src/numeric/brent.js';
import { findMinimum } from '../../src/numeric/golden-section.js';

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

describe('a root costs', () => {
  const readings = (f: (x: number) => number, low: number, high: number, tolerance?: number) => {
    let count = 0;
    const counted = (x: number) => {
      count++;
      return f(x);
    };
    const root = findRoot(counted, low, high, tolerance);
    return { count, root };
  };

  // Both ends, then the steps of Brent's chapter 4 by hand. Where rounding leaves f just off zero, one more reading, half a tolerance
  // further, closes the bracket.
  test.each([
    // The secant meets a line's root in its first step.
    ['of a line three readings', (x: number) => x - 0.3, -1, 1, 3, 0.3],
    ['of a falling line three readings', (x: number) => 0.3 - x, -1, 1, 3, 0.3],
    // x = (f + c)² is a parabola in f: once three points differ, the inverse parabola through them meets the root.
    // From 0.6 - the secant of -0.6 and 0.4 - the root lies on the far side, so that the very next step is such a one.
    ['of a square root four readings', (x: number) => Math.sqrt(x) - 0.6, 0, 1, 4, 0.36],
    // From 0.4 - the secant of -0.4 and 0.6 - it lies on the near side: another secant comes first.
    ['of a square root near its end five readings', (x: number) => Math.sqrt(x) - 0.4, 0, 1, 5, 0.16],
    ['of a square root from the right as many', (x: number) => Math.sqrt(-x) - 0.6, -1, 0, 4, -0.36],
  ])('%s', (_, f, low, high, least, expected) => {
    const { count, root } = readings(f, low, high);
    expect(root).toBeCloseTo(expected, 14);
    expect(count).toBeGreaterThanOrEqual(least);
    expect(count).toBeLessThanOrEqual(least + 1);
  });

  test('no more than the ends where one of them is the root', () => {
    expect(readings((x) => x ** 3 - 1, 1, 2)).toEqual({ count: 2, root: 1 });
    expect(readings((x) => x ** 3 - 8, 1, 2)).toEqual({ count: 2, root: 2 });
  });

  // Our own limits. Bisection to 1e-14 reads 2 + log2(width / 1e-14) times: 49 for a width of 1.
  test.each([
    ['smooth, a quarter of bisection', (x: number) => Math.cos(x) - x, 0, 1, 0.25],
    ['smooth and wide, a third of bisection', (x: number) => Math.exp(-x) - 0.5, 0, 50, 1 / 3],
    ['smooth but at no double zero, a quarter of bisection', (x: number) => x * x - 2, 1, 2, 0.25],
    ['curved the other way, a quarter of bisection', (x: number) => Math.log(x) + 1, 0.01, 1, 0.25],
    ['flat at the root, three times bisection', (x: number) => (x - 0.3) ** 19, -1, 1, 3],
    ['a step, three times bisection', (x: number) => (x < 0.3 ? -1e-9 : 1), -1, 1, 3],
    ['a pole beside it, three times bisection', (x: number) => 1 / (x + 1e-9) - 10, 0, 1, 3],
  ])('where the function is %s at most', (_, f, low, high, share) => {
    const bisection = 2 + Math.log2((high - low) / 1e-14);
    expect(readings(f, low, high).count).toBeLessThanOrEqual(share * bisection);
  });

  test('less where less is asked for, and still lies within the tolerance', () => {
    for (const tolerance of [0.1, 1e-2, 1e-3, 1e-5]) {
      let total = 0;
      let most = 0;
      for (let share = 1; share < 100; share++) {
        for (const power of [3, 9]) {
          const { count, root } = readings((x) => x ** power - share / 100, 0, 1, tolerance);
          expect(Math.abs(root - (share / 100) ** (1 / power))).toBeLessThanOrEqual(tolerance);
          total += count;
          most += readings((x) => x ** power - share / 100, 0, 1).count;
        }
      }
      expect(total).toBeLessThan(most);
    }
  });
});

describe('minimum', () => {
  test.each([
    ['a parabola through zero', (x: number) => (x - 0.7) ** 2, 0.7],
    ['a kink', (x: number) => Math.abs(x - 1.3), 1.3],
    ['lopsided', (x: number) => x - Math.log(x), 1],
  ])('%s', (_, f, path) => {
    // A smooth minimum above zero is known to the square root of a double's precision only.
    expect(Math.abs(findMinimum(f, 0.1, 3) - path)).toBeLessThanOrEqual(3e-8);
  });

  test('far from zero, where neighbouring doubles lie wider apart than the tolerance', () => {
    // Doubles are 2^-23 apart there; the search ends at eight of them.
    expect(Math.abs(findMinimum((x) => Math.abs(x - 1e9), 0, 3e9) - 1e9)).toBeLessThanOrEqual(8 * 2 ** -23);
  });
});
