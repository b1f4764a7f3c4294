// The difference formulas in decimal arithmetic of 40 digits, with hue angles as the papers write them.
import { all, type BigNumber, create } from 'mathjs';
import type { Lab } from '../../src/colorimetry/index.js';

const math = create(all, { number: 'BigNumber', precision: 40 });
const big = (value: number | string) => math.bignumber(value);
const atan2 = math.atan2 as unknown as (y: BigNumber, x: BigNumber) => BigNumber;
const PI = big('3.1415926535897932384626433832795028841972');
const degrees = (value: number | string) => big(value).mul(PI).div(180);
const hypot = (...values: BigNumber[]) => values.reduce((sum, v) => sum.add(v.mul(v)), big(0)).sqrt();

function hue(a: BigNumber, b: BigNumber): BigNumber {
  if (a.isZero() && b.isZero()) return big(0);
  const h = atan2(b, a);
  return h.isNegative() ? h.add(PI.mul(2)) : h;
}

interface Polar {
  readonly L: BigNumber;
  readonly a: BigNumber;
  readonly b: BigNumber;
  readonly C: BigNumber;
  readonly h: BigNumber;
}

function polar({ L, a, b }: Lab, stretch: BigNumber = big(1)): Polar {
  const A = big(a).mul(stretch);
  const B = big(b);
  return { L: big(L), a: A, b: B, C: hypot(A, B), h: hue(A, B) };
}

function turn(first: Polar, second: Polar): BigNumber {
  if (first.C.isZero() || second.C.isZero()) return big(0);
  const apart = second.h.sub(first.h);
  if (apart.gt(PI)) return apart.sub(PI.mul(2));
  return apart.lt(PI.neg()) ? apart.add(PI.mul(2)) : apart;
}

const dH = (first: Polar, second: Polar) => first.C.mul(second.C).sqrt().mul(2).mul(turn(first, second).div(2).sin());

export function exactE2000(reference: Lab, sample: Lab, kL = 1, kC = 1, kH = 1): number {
  const seventh = (C: BigNumber) =>
    C.pow(7)
      .div(C.pow(7).add(big(25).pow(7)))
      .sqrt();
  const Cab = polar(reference).C.add(polar(sample).C).div(2);
  const stretch = big(1.5).sub(seventh(Cab).div(2));
  const [r, s] = [polar(reference, stretch), polar(sample, stretch)];
  const sum = r.h.add(s.h);
  let h = sum;
  if (!r.C.isZero() && !s.C.isZero()) {
    if (r.h.sub(s.h).abs().lte(PI)) h = sum.div(2);
    else h = sum.lt(PI.mul(2)) ? sum.div(2).add(PI) : sum.div(2).sub(PI);
  }
  const L50 = r.L.add(s.L).div(2).sub(50).pow(2);
  const C = r.C.add(s.C).div(2);
  const T = big(1)
    .sub(h.sub(degrees(30)).cos().mul('0.17'))
    .add(h.mul(2).cos().mul('0.24'))
    .add(h.mul(3).add(degrees(6)).cos().mul('0.32'))
    .sub(h.mul(4).sub(degrees(63)).cos().mul('0.2'));
  const SL = L50.mul('0.015').div(L50.add(20).sqrt()).add(1);
  const SC = C.mul('0.045').add(1);
  const SH = C.mul('0.015').mul(T).add(1);
  const away = h.sub(degrees(275)).div(degrees(25));
  const RT = degrees(60).mul(away.mul(away).neg().exp()).sin().mul(seventh(C)).mul(-2);
  const l = s.L.sub(r.L).div(SL.mul(kL));
  const c = s.C.sub(r.C).div(SC.mul(kC));
  const hTerm = dH(r, s).div(SH.mul(kH));
  return l.mul(l).add(c.mul(c)).add(hTerm.mul(hTerm)).add(RT.mul(c).mul(hTerm)).sqrt().toNumber();
}

export function exactE94(reference: Lab, sample: Lab, kL: number, K1: number, K2: number): number {
  const [r, s] = [polar(reference), polar(sample)];
  const l = s.L.sub(r.L).div(kL);
  const c = s.C.sub(r.C).div(r.C.mul(K1).add(1));
  return hypot(l, c, dH(r, s).div(r.C.mul(K2).add(1))).toNumber();
}

export function exactCmc(reference: Lab, sample: Lab, l: number, c: number): number {
  const [r, s] = [polar(reference), polar(sample)];
  const cool = r.h.gte(degrees(164)) && r.h.lte(degrees(345));
  const T = cool
    ? r.h.add(degrees(168)).cos().mul('0.2').abs().add('0.56')
    : r.h.add(degrees(35)).cos().mul('0.4').abs().add('0.36');
  const F = r.C.pow(4).div(r.C.pow(4).add(1900)).sqrt();
  const SL = r.L.lt(16) ? big('0.511') : r.L.mul('0.040975').div(r.L.mul('0.01765').add(1));
  const SC = r.C.mul('0.0638').div(r.C.mul('0.0131').add(1)).add('0.638');
  const SH = SC.mul(F.mul(T).add(1).sub(F));
  return hypot(s.L.sub(r.L).div(SL.mul(l)), s.C.sub(r.C).div(SC.mul(c)), dH(r, s).div(SH)).toNumber();
}

export function exactE99o(reference: Lab, sample: Lab): number {
  const [r, s] = [reference, sample].map(({ L, a, b }) => {
    const [cos, sin] = [degrees(26).cos(), degrees(26).sin()];
    const e = cos.mul(a).add(sin.mul(b));
    const f = cos.mul(b).sub(sin.mul(a)).mul('0.83');
    const C = hypot(e, f).mul('0.075').add(1).ln().div('0.0435');
    const h = hue(e, f).add(degrees(26));
    return { L: big(L).mul('0.0039').add(1).ln().mul('303.67'), a: C.mul(h.cos()), b: C.mul(h.sin()) };
  });
  return hypot(s.L.sub(r.L), s.a.sub(r.a), s.b.sub(r.b)).toNumber();
}
