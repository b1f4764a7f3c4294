/**
 * A root of `f` between two points of opposite sign, by Brent's method: as safe as bisection, near the end as fast as the secant.
 *
 * @param f - continuous on [low, high]
 * @param low - f(low) and f(high) differ in sign, or one is zero; the caller has bracketed the root
 * @param tolerance - absolute tolerance in x; rounding of x itself is added
 * @returns x with f(x) = 0 within the tolerance
 * @see Brent (1973), Algorithms for Minimization without Derivatives, chapter 4, procedure zero
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 1e-14): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  let c = a;
  let fc = fa;
  let d = b - a;
  let e = d;
  for (let step = 0; step < 200; step++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      d = b - a;
      e = d;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    if (Math.abs(e) < near || Math.abs(fa) <= Math.abs(fb)) {
      d = half;
      e = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(e * q))) {
        e = d;
        d = p / q;
      } else {
        d = half;
        e = half;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(d) > near ? d : Math.sign(half) * near;
    fb = f(b);
  }
  return b;
}
