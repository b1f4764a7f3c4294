import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { incompleteBeta, inverseIncompleteBeta, logGamma } from '../../src/numeric/incomplete-beta.js';
import { fisherQuantile, studentProbability, studentQuantile } from '../../src/numeric/student-t.js';

const { jStat } = jstat;
const DEGREES = [1, 1.7, 2, 3.4, 4, 8, 15.5, 40, 200];
const PROBABILITIES = [0.55, 0.7, 0.8, 0.9, 0.95, 0.975, 0.99, 0.999];

// jstat ends its continued fraction at 3e-7 and so agrees to about 1e-8.
describe('against jstat', () => {
  test.each(DEGREES)('t with %d degrees of freedom', (n) => {
    for (const p of PROBABILITIES) {
      const t = studentQuantile(p, n);
      expect(Math.abs(t / jStat.studentt.inv(p, n) - 1)).toBeLessThanOrEqual(1e-7);
      expect(Math.abs(studentProbability(t, n) - jStat.studentt.cdf(t, n))).toBeLessThanOrEqual(1e-7);
    }
  });

  test('F', () => {
    for (const numerator of [1, 2, 5, 12]) {
      for (const denominator of [2, 4, 10, 50]) {
        const expected = jStat.centralF.inv(0.95, numerator, denominator);
        expect(Math.abs(fisherQuantile(0.95, numerator, denominator) / expected - 1)).toBeLessThanOrEqual(1e-7);
      }
    }
  });

  test('incomplete beta and log gamma', () => {
    for (const [a, b] of [
      [0.5, 0.5],
      [0.5, 2],
      [3, 0.5],
      [10, 20],
    ]) {
      for (const x of [0.01, 0.2, 0.5, 0.8, 0.99]) {
        expect(Math.abs(incompleteBeta(x, a, b) - jStat.beta.cdf(x, a, b))).toBeLessThanOrEqual(1e-7);
      }
    }
    for (const x of [0.5, 1, 2.5, 10, 100]) expect(Math.abs(logGamma(x) - jStat.gammaln(x))).toBeLessThanOrEqual(1e-9);
  });
});

describe('against scipy.stats, to 12 digits', () => {
  test.each([
    [1.7, 0.8, 1.10834500865],
    [1.7, 0.975, 5.11883898825],
    [1.7, 0.999, 34.7741978585],
    [3.4, 0.8, 0.960535846705],
    [3.4, 0.975, 2.98077350256],
    [3.4, 0.999, 8.61698728991],
    [15.5, 0.8, 0.865429882883],
    [15.5, 0.975, 2.12547665923],
    [15.5, 0.999, 3.70862009798],
    [200, 0.8, 0.843422131535],
    [200, 0.975, 1.97189622363],
    [200, 0.999, 3.13147981422],
  ])('t with %d degrees of freedom at p = %d', (n, p, expected) => {
    expect(Math.abs(studentQuantile(p, n) / expected - 1)).toBeLessThanOrEqual(5e-12);
  });
});

describe('closed forms', () => {
  // Abramowitz & Stegun 26.7: t with one degree of freedom is Cauchy's, with two an algebraic function.
  test.each(PROBABILITIES)('one and two degrees of freedom at p = %d', (p) => {
    expect(Math.abs(studentQuantile(p, 1) / Math.tan(Math.PI * (p - 0.5)) - 1)).toBeLessThanOrEqual(1e-10);
    const two = (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
    expect(Math.abs(studentQuantile(p, 2) / two - 1)).toBeLessThanOrEqual(1e-10);
  });

  test('the normal quantile for endless degrees of freedom', () => {
    for (const p of PROBABILITIES) {
      expect(Math.abs(studentQuantile(p, Number.POSITIVE_INFINITY) - jStat.normal.inv(p, 0, 1))).toBeLessThanOrEqual(
        1e-6,
      );
    }
  });
});

test('symmetric about the median, and inverse of one another', () => {
  for (const n of DEGREES) {
    expect(studentQuantile(0.5, n)).toBeCloseTo(0, 7);
    expect(studentQuantile(0.1, n)).toBe(-studentQuantile(0.9, n));
    for (const t of [0, 0.3, 2]) expect(studentProbability(-t, n) + studentProbability(t, n)).toBeCloseTo(1, 12);
    for (const p of PROBABILITIES) expect(studentProbability(studentQuantile(p, n), n)).toBeCloseTo(p, 12);
  }
  for (const p of [0, 0.3, 1]) expect(incompleteBeta(inverseIncompleteBeta(p, 2, 3), 2, 3)).toBeCloseTo(p, 12);
});
