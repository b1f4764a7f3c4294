import { all, type BigNumber, create } from 'mathjs';

// The Kubelka-Munk film in arithmetic of 160 digits, by the textbook forms: their cancellations cost up to 80 digits.
const math = create(all, { number: 'BigNumber', precision: 160 });

/** The exact value of a double: its shortest decimal text, which mathjs would take, is another number. */
function big(x: number): BigNumber {
  let mantissa = x;
  let doublings = 0;
  while (!Number.isInteger(mantissa)) {
    mantissa *= 2;
    doublings++;
  }
  return math.bignumber(BigInt(mantissa).toString()).div(math.bignumber(2).pow(doublings));
}

/** Kubelka's hyperbolic solution, with the limits K = 0 and S = 0 taken by hand. */
export function exactReflectance(K: number, S: number, X: number, Rg: number): BigNumber {
  const [k, s, x, g] = [big(K), big(S), big(X), big(Rg)];
  if (S === 0) return g.mul(k.mul(x).mul(-2).exp());
  if (K === 0) {
    const through = s.mul(x).mul(big(1).sub(g));
    return through.add(g).div(through.add(1));
  }
  const a = k.add(s).div(s);
  const b = a.mul(a).sub(1).sqrt();
  const u = b.mul(s).mul(x);
  if (u.isZero()) return g;
  const E = u.mul(-2).exp();
  const coth = big(1).add(E).div(big(1).sub(E));
  return big(1)
    .sub(g.mul(a.sub(b.mul(coth))))
    .div(a.sub(g).add(b.mul(coth)));
}

/** K X and S X from readings over two substrates: the two linear equations in a and b coth bSX, then the inverse hyperbolic cotangent. */
export function exactCoefficients(overBlack: number, overWhite: number, black: number, white: number) {
  const [Rb, Rw, B, W] = [big(overBlack), big(overWhite), big(black), big(white)];
  const determinant = Rb.add(B)
    .mul(Rw.sub(W))
    .sub(Rw.add(W).mul(Rb.sub(B)));
  const rightBlack = Rb.mul(B).add(1);
  const rightWhite = Rw.mul(W).add(1);
  const a = rightBlack
    .mul(Rw.sub(W))
    .sub(rightWhite.mul(Rb.sub(B)))
    .div(determinant);
  const y = Rb.add(B).mul(rightWhite).sub(Rw.add(W).mul(rightBlack)).div(determinant);
  const b = a.mul(a).sub(1).sqrt();
  const sx = y.add(b).div(y.sub(b)).ln().div(2).div(b);
  return { kx: a.sub(1).mul(sx), sx, opaque: a.sub(b) };
}

/** |value - exact|, and the same relative to the exact value. */
export function absoluteError(value: number, exact: BigNumber): number {
  return big(value).sub(exact).abs().toNumber();
}

export function relativeError(value: number, exact: BigNumber): number {
  return exact.isZero() ? Math.abs(value) : big(value).sub(exact).div(exact).abs().toNumber();
}
