import { deltaE2000, type Lab } from '../colorimetry/index.js';

/** ΔE*ab over which the colour-difference formula is taken as even: small against its bends, large against rounding. */
const STEP = 0.02;

/**
 * Around one colour, the linear map under which the length of a difference is ΔE00.
 *
 * CIEDE2000 of small differences is a quadratic form of ΔL*, Δa*, Δb*. The form is read off the formula by small steps around
 * the colour; its Cholesky factor is the map.
 *
 * @param around - colour between those that are compared
 * @see ISO/CIE 11664-6; Pant & Farup (2012), Color Res. Appl. 37, on the metric of a colour-difference formula
 */
export function evenSpace(around: Lab): (lab: Lab) => Lab {
  const square = (L: number, a: number, b: number) => {
    const shifted = (sign: number): Lab => ({
      L: around.L + (sign * STEP * L) / 2,
      a: around.a + (sign * STEP * a) / 2,
      b: around.b + (sign * STEP * b) / 2,
    });
    return (deltaE2000(shifted(-1), shifted(1)) / STEP) ** 2;
  };
  // A quadratic form from its values: q(u, v) = (q(u + v) - q(u - v)) / 4. Lightness does not mix with a* and b*.
  const aa = square(0, 1, 0);
  const ab = (square(0, 1, 1) - square(0, 1, -1)) / 4;
  const bb = square(0, 0, 1);
  const l = Math.sqrt(square(1, 0, 0));
  const a1 = Math.sqrt(aa);
  const a2 = ab / a1;
  const b2 = Math.sqrt(Math.max(bb - a2 * a2, 0));
  return ({ L, a, b }) => ({ L: l * L, a: a1 * a + a2 * b, b: b2 * b });
}
