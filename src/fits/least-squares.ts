import { inv, matrix, multiply, norm, qr, transpose } from 'mathjs';

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
  const { Q, R } = qr(matrix(rows));
  const k = columns.length;
  const square = (R.valueOf() as number[][]).slice(0, k);
  // What is left of a unit column outside the span of those before it; below this, rounding.
  if (square.some((row, i) => Math.abs(row[i]) < 1e-13)) return dependent;
  const inverse = inv(square);
  const condition = Number(norm(square, 2)) * Number(norm(inverse, 2));
  const thin = (Q.valueOf() as number[][]).map((row) => row.slice(0, k));
  const solver = multiply(inverse, transpose(thin));
  return {
    condition,
    solve: (target) => multiply(solver, Array.from(target)).map((value, j) => value / lengths[j]),
  };
}
