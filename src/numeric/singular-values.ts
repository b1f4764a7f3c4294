/** Sweeps after which rotations of doubles no longer change anything; a handful is usual. */
const MOST_SWEEPS = 60;

/**
 * Singular values of a small matrix, largest first, by one-sided Jacobi rotations: pairs of columns are turned until all are at right
 * angles; their lengths are the singular values, the small ones as exact as the large.
 *
 * @param columns - of equal length, at least one
 * @see Hestenes (1958), J. Soc. Indust. Appl. Math. 6, 51-90; Golub & Van Loan, Matrix Computations, 8.6.3
 */
export function singularValues(columns: readonly ArrayLike<number>[]): number[] {
  const turned = columns.map((column) => Float64Array.from(column));
  for (let sweep = 0, turning = true; turning && sweep < MOST_SWEEPS; sweep++) {
    turning = false;
    for (let i = 1; i < turned.length; i++) {
      for (let j = 0; j < i; j++) if (turn(turned[j], turned[i])) turning = true;
    }
  }
  return turned.map((column) => Math.hypot(...column)).sort((a, b) => b - a);
}

/** Turns two columns within their plane to right angles; false if they are so already. */
function turn(a: Float64Array, b: Float64Array): boolean {
  let aa = 0;
  let bb = 0;
  let ab = 0;
  for (let k = 0; k < a.length; k++) {
    aa += a[k] * a[k];
    bb += b[k] * b[k];
    ab += a[k] * b[k];
  }
  if (Math.abs(ab) <= Number.EPSILON * Math.sqrt(aa * bb)) return false;
  const zeta = (bb - aa) / (2 * ab);
  const t = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.hypot(1, zeta));
  const cosine = 1 / Math.hypot(1, t);
  const sine = cosine * t;
  for (let k = 0; k < a.length; k++) {
    const before = a[k];
    a[k] = cosine * before - sine * b[k];
    b[k] = sine * before + cosine * b[k];
  }
  return true;
}
