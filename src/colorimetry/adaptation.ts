import type { Xyz } from './xyz-from-spectrum.js';

/** Cone-like responses of the Bradford transform: rows of the matrix and of its inverse. */
const BRADFORD = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/**
 * The colour that looks the same under another white, by the linear Bradford transform with complete adaptation.
 *
 * @param xyz - tristimulus values under `from`
 * @param from - white that the eye was adapted to
 * @param to - white that it is adapted to now, on the same scale
 * @returns tristimulus values under `to`
 * @see Lam (1985), thesis, University of Bradford; ISO 15076-1, annex on chromatic adaptation
 */
export function adaptBradford(xyz: Xyz, from: Xyz, to: Xyz): Xyz {
  const [r, g, b] = responses(xyz);
  const [r1, g1, b1] = responses(from);
  const [r2, g2, b2] = responses(to);
  return solve((r * r2) / r1, (g * g2) / g1, (b * b2) / b1);
}

function responses({ X, Y, Z }: Xyz): number[] {
  return BRADFORD.map(([x, y, z]) => x * X + y * Y + z * Z);
}

/** Cramer's rule on the matrix: no second, rounded inverse to keep in step. */
function solve(r: number, g: number, b: number): Xyz {
  const [[m11, m12, m13], [m21, m22, m23], [m31, m32, m33]] = BRADFORD;
  const X = (m22 * m33 - m23 * m32) * r + (m13 * m32 - m12 * m33) * g + (m12 * m23 - m13 * m22) * b;
  const Y = (m23 * m31 - m21 * m33) * r + (m11 * m33 - m13 * m31) * g + (m13 * m21 - m11 * m23) * b;
  const Z = (m21 * m32 - m22 * m31) * r + (m12 * m31 - m11 * m32) * g + (m11 * m22 - m12 * m21) * b;
  const determinant = m11 * (m22 * m33 - m23 * m32) + m12 * (m23 * m31 - m21 * m33) + m13 * (m21 * m32 - m22 * m31);
  return { X: X / determinant, Y: Y / determinant, Z: Z / determinant };
}
