import { TintladderError } from '../errors.js';
import type { Lab } from './cielab.js';
import { assertFinite } from './finite.js';

/** Parametric factors of CIEDE2000; 1 under reference conditions, kL = 2 in textile practice. */
export interface DeltaE2000Options {
  /** @default 1 */
  readonly kL?: number;
  /** @default 1 */
  readonly kC?: number;
  /** @default 1 */
  readonly kH?: number;
}

const DEGREE = Math.PI / 180;

/**
 * CIEDE2000 colour difference.
 *
 * Both colours must come from one illuminant and observer; nothing is adapted here. Where the hues are exactly 180 degrees
 * apart the mean hue is half their sum, as in Sharma et al.
 *
 * @param reference - CIELAB; L* 0 to 100
 * @param sample - CIELAB under the same white
 * @param options - parametric factors, each > 0
 * @returns ΔE00 >= 0, symmetric in its arguments
 * @throws TintladderError `not-finite` if a coordinate is no finite number; `invalid-option` for a factor that is not positive
 * @example deltaE2000({ L: 50, a: 2.6772, b: -79.7751 }, { L: 50, a: 0, b: -82.7485 }) // 2.0425
 * @see Sharma, Wu & Dalal (2005), Color Res. Appl. 30, equations 2 to 22; ISO/CIE 11664-6
 */
export function deltaE2000(reference: Lab, sample: Lab, { kL = 1, kC = 1, kH = 1 }: DeltaE2000Options = {}): number {
  for (const [name, k] of Object.entries({ kL, kC, kH })) {
    if (!(k > 0 && k < Infinity)) {
      throw new TintladderError('invalid-option', { place: `options.${name}`, seen: k, expected: 'a positive number' });
    }
  }
  const difference = kernel(reference.L, reference.a, reference.b, sample.L, sample.a, sample.b, kL, kC, kH);
  if (!Number.isFinite(difference)) {
    assertFinite({ ...reference }, 'reference');
    assertFinite({ ...sample }, 'sample');
    assertFinite({ difference }, 'deltaE2000');
  }
  return difference;
}

function kernel(
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
  const C7 = ((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2) ** 7;
  const G = 0.5 * (1 - Math.sqrt(C7 / (C7 + 25 ** 7)));
  const ap1 = (1 + G) * a1;
  const ap2 = (1 + G) * a2;
  const Cp1 = Math.hypot(ap1, b1);
  const Cp2 = Math.hypot(ap2, b2);
  const hp1 = hue(ap1, b1);
  const hp2 = hue(ap2, b2);

  const neutral = Cp1 * Cp2 === 0;
  const apart = hp2 - hp1;
  let dh = 0;
  let h = hp1 + hp2;
  if (!neutral) {
    dh = apart > 180 ? apart - 360 : apart < -180 ? apart + 360 : apart;
    h = Math.abs(apart) <= 180 ? h / 2 : h < 360 ? (h + 360) / 2 : (h - 360) / 2;
  }
  const dL = L2 - L1;
  const dC = Cp2 - Cp1;
  const dH = 2 * Math.sqrt(Cp1 * Cp2) * Math.sin((dh / 2) * DEGREE);

  const L = (L1 + L2) / 2;
  const C = (Cp1 + Cp2) / 2;
  const T =
    1 -
    0.17 * Math.cos((h - 30) * DEGREE) +
    0.24 * Math.cos(2 * h * DEGREE) +
    0.32 * Math.cos((3 * h + 6) * DEGREE) -
    0.2 * Math.cos((4 * h - 63) * DEGREE);
  const SL = 1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2);
  const SC = 1 + 0.045 * C;
  const SH = 1 + 0.015 * C * T;
  const RC = 2 * Math.sqrt(C ** 7 / (C ** 7 + 25 ** 7));
  const RT = -RC * Math.sin(60 * DEGREE * Math.exp(-(((h - 275) / 25) ** 2)));

  const l = dL / (kL * SL);
  const c = dC / (kC * SC);
  const hTerm = dH / (kH * SH);
  return Math.sqrt(l * l + c * c + hTerm * hTerm + RT * c * hTerm);
}

function hue(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const h = Math.atan2(b, a) / DEGREE;
  return h < 0 ? h + 360 : h;
}
