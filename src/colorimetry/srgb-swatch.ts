import { inGamut, sRGB, to, toGamutCSS, XYZ_D65 } from 'colorjs.io/fn';
import { adaptBradford } from './adaptation.js';
import { type Lab, xyzFromLab } from './cielab.js';
import type { Viewing } from './viewing.js';
import { whitePoint } from './xyz-from-spectrum.js';

/** A colour for the screen. */
export interface SrgbSwatch {
  /** `#rrggbb`, as CSS takes it. */
  readonly hex: string;
  /** Red, green, blue of sRGB from 0 to 1, before rounding to 8 bits. */
  readonly rgb: readonly [number, number, number];
  /** Whether sRGB holds the colour; if not, its chroma was reduced, and the swatch only resembles it. */
  readonly inGamut: boolean;
  /** The chromatic adaptation from the viewing white to D65, 2 degrees. */
  readonly adaptation: 'Bradford';
}

/**
 * The screen colour of a CIELAB colour: adapted from its white to that of sRGB, and brought into the gamut of sRGB if it lies outside.
 *
 * A swatch is for recognising samples, not for judging them: a screen shows neither the illuminant nor the surface.
 *
 * @param lab - CIELAB
 * @param viewing - illuminant and observer that `lab` belongs to
 * @returns sRGB as hex text and as fractions, and whether the colour was inside the gamut
 * @throws TintladderError `not-finite`, `unknown-illuminant`, `unknown-observer`
 * @example srgbSwatch({ L: 100, a: 0, b: 0 }, A_10).hex // '#ffffff'
 * @example srgbSwatch({ L: 50, a: 0, b: 150 }, D65_10).inGamut // false
 * @see IEC 61966-2-1 for sRGB; CSS Color 4, gamut mapping, for colours outside it; ISO 15076-1 for the adaptation
 */
export function srgbSwatch(lab: Lab, viewing: Viewing): SrgbSwatch {
  const white = whitePoint(viewing);
  const [X, Y, Z] = XYZ_D65.white;
  const adapted = adaptBradford(xyzFromLab(lab, white), white, { X, Y, Z });
  const colour = to({ space: XYZ_D65, coords: [adapted.X, adapted.Y, adapted.Z], alpha: 1 }, sRGB);
  const [r, g, b] = toGamutCSS(colour).coords.map((value) => value ?? 0);
  const hex = [r, g, b]
    .map((value) =>
      Math.round(255 * value)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('');
  return { hex: `#${hex}`, rgb: [r, g, b], inGamut: inGamut(colour, sRGB), adaptation: 'Bradford' };
}
