import { singularValues } from '../../numeric/internal.js';
import { qrDecomposition } from './qr-decomposition.js';

/** A linear least-squares problem that is factored once and solved for many right-hand sides. */
export interface LeastSquares {
  /** The solution for one right-hand side */
  readonly solve: (target: ArrayLike<number>) => number[];
  /** Condition number of the columns scaled to unit length; Infinity if they are dependent */
  readonly condition: number;
}

/**
 * Factors `columns · x ≈ target` by Householder reflections (QR), with the columns scaled to unit length, so that the condition number tells
 * of their directions and not of their units.
 *
 * @param columns - one array of equal length for each unknown, weights already in them; no fewer rows than columns
 * @see Golub & Van Loan, Matrix Computations, 5.2 and 5.3
 */
export function factorLeastSquares(columns: readonly ArrayLike<number>[]): LeastSquares {
  const dependent: LeastSquares = { solve: () => columns.map(() => 0), condition: Infinity };
  const lengths = columns.map((column) => Math.hypot(...Array.from(column)));
  if (lengths.some((length) => !(length > 0))) return dependent;
  const rows = Array.from(columns[0], (_, row) => columns.map((column, j) => column[row] / lengths[j]));
  const { Q, R } = qrDecomposition(rows);
  const k = columns.length;
  const triangle = R.slice(0, k);
  // What is left of a unit column outside the span of those before it; below this, rounding.
  if (triangle.some((row, i) => Math.abs(row[i]) < 1e-13)) return dependent;
  const singular = singularValues(triangle[0].map((_, j) => triangle.map((row) => row[j])));
  return {
    condition: singular[0] / singular[k - 1],
    solve: (target) => {
      const x = triangle.map((_, j) => Q.reduce((sum, row, i) => sum + row[j] * target[i], 0));
      for (let i = k - 1; i >= 0; i--) {
        for (let j = i + 1; j < k; j++) x[i] -= triangle[i][j] * x[j];
        x[i] /= triangle[i][i];
      }
      return x.map((value, j) => value / lengths[j]);
    },
  };
}
