import fc from 'fast-check';
import { eigs } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { singularValues } from '../../src/numeric/singular-values.js';

describe('singular values', () => {
  test('of columns at right angles are their lengths, largest first', () => {
    expect(
      singularValues([
        [0, 2, 0],
        [3, 0, 0],
        [0, 0, 1],
      ]),
    ).toEqual([3, 2, 1]);
  });

  test('of two unit columns at an angle are sqrt(1 ± cos), down to angles that squares would lose', () => {
    for (const angle of [1, 1e-3, 1e-7]) {
      const [large, small] = singularValues([
        [1, 0],
        [Math.cos(angle), Math.sin(angle)],
      ]);
      expect(large).toBeCloseTo(Math.SQRT2 * Math.cos(angle / 2), 14);
      // the cosine of the second column is rounded, which alone moves the smallest value by 1e-16
      expect(small).toBeCloseTo(Math.SQRT2 * Math.sin(angle / 2), 15);
    }
  });

  test('of dependent columns end in zero', () => {
    expect(
      singularValues([
        [1, 2, 3],
        [2, 4, 6],
      ])[1],
    ).toBeLessThan(1e-14);
  });

  const SEED = 20251125;
  test(`are the square roots of the eigenvalues of the products of the columns, as mathjs finds them (seed ${SEED})`, () => {
    const matrices = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 4, max: 6 })).chain(([k, n]) =>
      fc.array(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: n, maxLength: n }), {
        minLength: k,
        maxLength: k,
      }),
    );
    fc.assert(
      fc.property(matrices, (columns) => {
        const products = columns.map((a) => columns.map((b) => a.reduce((sum, value, i) => sum + value * b[i], 0)));
        const squares = (eigs(products, { eigenvectors: false }).values as number[]).map((value) => Math.max(value, 0));
        const expected = squares.sort((a, b) => b - a).map(Math.sqrt);
        // the eigenvalues are good to 1e-12 or so of the largest; the root of a small one to the root of that
        for (const [i, value] of singularValues(columns).entries())
          expect(Math.abs(value - expected[i])).toBeLessThan(1e-5);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});
