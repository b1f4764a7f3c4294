import { assertFinite, assertObject } from '../core/internal.js';
import type { Lab } from './cielab.js';
import { assertLab } from './finite-lab.js';

/** CIELAB in cylindrical form: lightness, chroma, hue angle h in degrees, 0 <= h < 360. */
export interface Lch {
  readonly L: number;
  readonly C: number;
  readonly h: number;
}

/** Hue angle in degrees, 0 <= h < 360; 0 for a neutral, which has none. */
export function hueAngle(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const h = (Math.atan2(b, a) * 180) / Math.PI;
  // A tiny negative angle would round to 360 itself when 360 is added.
  return h < 0 ? (h + 360) % 360 : h;
}

/**
 * Lightness, chroma and hue angle of a CIELAB colour.
 *
 * @param lab - L*, a*, b*
 * @returns L*, C*ab, h_ab in degrees (0 for a neutral)
 * @throws TintladderError `not-finite`
 * @example lchFromLab({ L: 50, a: 0, b: -10 }) // { L: 50, C: 10, h: 270 }
 * @see ISO/CIE 11664-4
 */
export function lchFromLab(lab: Lab): Lch {
  assertLab(lab, 'lab');
  const { L, a, b } = lab;
  return { L, C: Math.hypot(a, b), h: hueAngle(a, b) };
}

/**
 * CIELAB from lightness, chroma and hue angle.
 *
 * @param lch - L*, C*ab, h_ab in degrees (any turn)
 * @returns L*, a*, b*
 * @throws TintladderError `not-finite`
 * @example labFromLch({ L: 50, C: 10, h: 180 }).a // -10
 * @see ISO/CIE 11664-4
 */
export function labFromLch(lch: Lch): Lab {
  assertObject(lch, 'lch', 'an object with L, C and h');
  const { L, C, h } = lch;
  assertFinite({ L, C, h }, 'lch');
  const radians = (h * Math.PI) / 180;
  return { L, a: C * Math.cos(radians), b: C * Math.sin(radians) };
}
