/** Nodes in -1..1 and their weights. */
export interface Quadrature {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Gauss-Legendre quadrature, exact for polynomials up to degree 2n - 1.
 *
 * @param n - number of nodes, from 2 on
 * @see Press et al., Numerical Recipes, section 4.6: the roots of Legendre's polynomials by Newton's method
 */
export function gaussLegendre(n: number): Quadrature {
  const roots = Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 20; step++) {
      let [last, value] = [1, x];
      for (let k = 2; k <= n; k++) [last, value] = [value, ((2 * k - 1) * x * value - (k - 1) * last) / k];
      slope = (n * (x * value - last)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    return { x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
  return { nodes: roots.map(({ x }) => x), weights: roots.map(({ weight }) => weight) };
}

/** The nodes and weights for an integral from `low` to `high`. */
export function quadratureOver({ nodes, weights }: Quadrature, low: number, high: number): Quadrature {
  const half = (high - low) / 2;
  return { nodes: nodes.map((x) => low + half * (x + 1)), weights: weights.map((weight) => weight * half) };
}
