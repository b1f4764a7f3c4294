/** Arithmetic mean of at least one value. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Sum of squared deviations from the mean. */
export function squaresAroundMean(values: readonly number[]): number {
  const centre = mean(values);
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
}

/** Variance of a sample of at least two values, with n - 1. */
export function variance(values: readonly number[]): number {
  return squaresAroundMean(values) / (values.length - 1);
}

/** Mean of several rows of equal length, place by path. */
export function meanRow(rows: readonly Float64Array[]): Float64Array {
  const centre = new Float64Array(rows[0].length);
  for (const row of rows) for (let i = 0; i < centre.length; i++) centre[i] += row[i] / rows.length;
  return centre;
}
