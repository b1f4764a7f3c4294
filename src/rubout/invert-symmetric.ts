/** Inverse of a small symmetric positive definite matrix, by elimination without pivots. */
export function invertSymmetric(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i++) {
    const pivot = work[i][i];
    for (let j = i; j < 2 * n; j++) work[i][j] /= pivot;
    for (let k = 0; k < n; k++) {
      if (k === i) continue;
      const factor = work[k][i];
      if (factor !== 0) for (let j = i; j < 2 * n; j++) work[k][j] -= factor * work[i][j];
    }
  }
  return work.map((row) => row.slice(n));
}
