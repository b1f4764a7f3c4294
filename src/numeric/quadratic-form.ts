/** `vᵀ M v` of three coordinates, M row by row: with a covariance matrix and a unit vector, the variance along that vector. */
export function quadraticForm(matrix: readonly number[], v: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) sum += v[i] * matrix[3 * i + j] * v[j];
  return sum;
}
