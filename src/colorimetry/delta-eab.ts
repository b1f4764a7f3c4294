import type { Lab } from './cielab.js';
import { assertLabs, finiteDifference } from './finite-lab.js';

/**
 * CIE 1976 colour difference ΔE*ab: the distance in CIELAB.
 *
 * @param reference - CIELAB
 * @param sample - CIELAB under the same white
 * @returns ΔE*ab >= 0, symmetric in its arguments
 * @throws TintladderError `not-finite`
 * @example deltaEab({ L: 50, a: 0, b: 0 }, { L: 53, a: 4, b: 0 }) // 5
 * @see ISO/CIE 11664-4; ASTM D2244
 */
export function deltaEab(reference: Lab, sample: Lab): number {
  assertLabs(reference, sample);
  return finiteDifference(Math.hypot(sample.L - reference.L, sample.a - reference.a, sample.b - reference.b));
}
