/**
 * Adds `weight` times the Lagrange coefficients at `position`, in steps from the first reading, to the readings around it: cubic inside,
 * quadratic in the first and last interval, the end reading itself beyond the ends.
 *
 * @see ASTM E2022
 */
export function spreadLagrange(weight: number, position: number, weights: Float64Array): void {
  const last = weights.length - 1;
  if (position <= 0) {
    weights[0] += weight;
    return;
  }
  if (position >= last) {
    weights[last] += weight;
    return;
  }
  const interval = Math.floor(position);
  const first = Math.max(0, interval - 1);
  const end = Math.min(last, interval + 2);
  for (let i = first; i <= end; i++) {
    let coefficient = weight;
    for (let j = first; j <= end; j++) if (j !== i) coefficient *= (position - j) / (i - j);
    weights[i] += coefficient;
  }
}

/** The curve of the same coefficients through evenly spaced values, for positions from 0 to `values.length - 1`. */
export function interpolateLagrange(values: Float64Array): (position: number) => number {
  return (position) => {
    const weights = new Float64Array(values.length);
    spreadLagrange(1, position, weights);
    return weights.reduce((sum, weight, i) => sum + weight * values[i], 0);
  };
}
