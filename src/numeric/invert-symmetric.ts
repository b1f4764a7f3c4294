/**
 * Inverse of a symmetric positive definite matrix by Gauss-Jordan elimination.
 *
 * @param matrix - rows; not changed
 * @returns undefined where the matrix is singular, a pivot being below 1e-9 of its diagonal element
 */
export function invertSymmetric(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < n; k++) {
    const pivot = rows[k][k];
    if (!(pivot > 1e-9 * matrix[k][k])) return undefined;
    for (let j = 0; j < 2 * n; j++) rows[k][j] /= pivot;
    for (let i = 0; i < n; i++) {
      const factor = rows[i][k];
      if (i === k || factor === 0) continue;
      for (let j = 0; j < 2 * n; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  return rows.map((row) => row.slice(n));
}
