import { NO_ROTATION, rotationSine } from './rotation-term.js';

// Cosines and sines of the fixed angles of the formula, in degrees.
const COS_6 = 0.9945218953682733;
const SIN_6 = 0.10452846326765347;
const COS_30 = 0.8660254037844387;
const COS_63 = 0.45399049973954675;
const SIN_63 = 0.8910065241883679;
const COS_275 = 0.08715574274765817;
const SIN_275 = -0.9961946980917455;

/**
 * CIEDE2000 of one pair, unchecked. The single and the batch form both call it, so they agree to the bit, and every step
 * is symmetric, so both orders do.
 *
 * Hues are unit vectors: the mean hue is the direction of their sum, or, for hues more than 90 degrees apart, the
 * perpendicular of their difference, which stays exact close to 180 degrees. The multiple angles of T follow from the
 * cosine and sine of the mean hue by polynomials.
 *
 * At 180 degrees there are two mean hues. Sharma et al. take half the sum of the two angles, which is a quarter turn on from the smaller one. So
 * is it here, for all pairs within 1e-15 of 180 degrees, which rounding can't tell apart: the smaller angle is that of the colour with the larger b*,
 * or, where both are equal, with the larger a'. Compared and not looked at by sign, the rule is the same in both orders.
 *
 * @see Sharma, Wu & Dalal (2005), Color Res. Appl. 30, equations 2 to 22
 */
export function ciede2000(
  L1: number,
  a1: number,
  b1: number,
  L2: number,
  a2: number,
  b2: number,
  kL: number,
  kC: number,
  kH: number,
): number {
  const stretch = 1.5 - 0.5 * highChroma((Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2);
  const ap1 = stretch * a1;
  const ap2 = stretch * a2;
  const C1 = Math.sqrt(ap1 * ap1 + b1 * b1);
  const C2 = Math.sqrt(ap2 * ap2 + b2 * b2);
  const C = (C1 + C2) / 2;
  const fromMiddle = (L1 + L2) / 2 - 50;
  const L50 = fromMiddle * fromMiddle;
  const l = (L2 - L1) / (kL * (1 + (0.015 * L50) / Math.sqrt(20 + L50)));
  const c = (C2 - C1) / (kC * (1 + 0.045 * C));

  // A neutral has no hue: neither a hue difference nor a rotation.
  const product = C1 * C2;
  if (product < 1e-100) return Math.sqrt(l * l + c * c);

  const cross = ap1 * b2 - ap2 * b1;
  const dot = ap1 * ap2 + b1 * b2;
  let x: number;
  let y: number;
  let dH: number;
  let length: number;
  if (dot >= 0) {
    x = ap1 * C2 + ap2 * C1;
    y = b1 * C2 + b2 * C1;
    length = Math.sqrt(x * x + y * y);
    dH = (2 * cross * Math.sqrt(product)) / length;
  } else {
    const tie = Math.abs(cross) <= -1e-15 * dot;
    const turn = (tie ? b1 > b2 || (b1 === b2 && ap1 > ap2) : cross > 0) ? 1 : -1;
    x = turn * (b2 * C1 - b1 * C2);
    y = turn * (ap1 * C2 - ap2 * C1);
    length = Math.sqrt(x * x + y * y);
    dH = (turn * length) / Math.sqrt(product);
  }
  const cos = x / length;
  const sin = y / length;

  const cos2 = 2 * cos * cos - 1;
  const sin2 = 2 * sin * cos;
  const T =
    1 -
    0.17 * (COS_30 * cos + 0.5 * sin) +
    0.24 * cos2 +
    0.32 * (COS_6 * cos * (2 * cos2 - 1) - SIN_6 * sin * (2 * cos2 + 1)) -
    0.2 * (COS_63 * (2 * cos2 * cos2 - 1) + SIN_63 * 2 * sin2 * cos2);
  const h = dH / (kH * (1 + 0.015 * C * T));

  // The rotation term takes h - 275 degrees as it is, not the short way round: hues from 0 to 90 degrees are far from it.
  const blue = COS_275 * cos + SIN_275 * sin;
  if (blue < NO_ROTATION || (cos > 0 && sin > -1e-15)) return Math.sqrt(l * l + c * c + h * h);
  const rotation = -2 * highChroma(C) * rotationSine(blue);
  return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
}

/** sqrt(C^7 / (C^7 + 25^7)), without overflow. */
function highChroma(C: number): number {
  const ratio = 25 / C;
  const cube = ratio * ratio * ratio;
  return Math.sqrt(1 / (1 + cube * cube * ratio));
}
