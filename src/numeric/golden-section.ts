const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The place of a minimum of `f` between two points, by golden-section search.
 *
 * Slower than parabolic steps but never misled by a function that is flat, kinked or noisy in its last digits.
 *
 * @param f - with one minimum on [low, high]
 * @param tolerance - width at which the search ends
 * @see Kiefer (1953), Proc. Amer. Math. Soc. 4
 */
export function findMinimum(f: (x: number) => number, low: number, high: number, tolerance = 1e-10): number {
  let a = low;
  let b = high;
  let left = b - GOLDEN * (b - a);
  let right = a + GOLDEN * (b - a);
  let fLeft = f(left);
  let fRight = f(right);
  while (b - a > tolerance + 4 * Number.EPSILON * Math.abs(a)) {
    if (fLeft <= fRight) {
      b = right;
      right = left;
      fRight = fLeft;
      left = b - GOLDEN * (b - a);
      fLeft = f(left);
    } else {
      a = left;
      left = right;
      fLeft = fRight;
      right = a + GOLDEN * (b - a);
      fRight = f(right);
    }
  }
  return (a + b) / 2;
}
