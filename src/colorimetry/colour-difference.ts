import { deltaE2000 } from './ciede2000.js';
import type { Lab } from './cielab.js';
import { deltaEab } from './delta-eab.js';
import { hueDifference } from './hue-difference.js';

/** A colour difference with all its parts, sample minus reference. */
export interface ColourDifference {
  readonly kind: 'colour-difference';
  readonly version: 1;
  readonly dL: number;
  readonly da: number;
  readonly db: number;
  readonly dC: number;
  /** Signed: positive when the hue angle of the sample is the larger, the short way round. */
  readonly dH: number;
  readonly dEab: number;
  readonly dE2000: number;
}

/**
 * ΔL*, Δa*, Δb*, ΔC*ab, ΔH*ab, ΔE*ab and ΔE00 of a sample against a reference.
 *
 * @param reference - CIELAB
 * @param sample - CIELAB under the same white
 * @returns all parts, sample minus reference
 * @throws TintladderError `not-finite`
 * @example colourDifference({ L: 50, a: 10, b: 0 }, { L: 50, a: 0, b: 10 }).dH // 14.1421
 * @see ISO/CIE 11664-4; Sève (1991), Color Res. Appl. 16, for ΔH*ab without angles; ISO/CIE 11664-6
 */
export function colourDifference(reference: Lab, sample: Lab): ColourDifference {
  const dEab = deltaEab(reference, sample);
  const C1 = Math.hypot(reference.a, reference.b);
  const C2 = Math.hypot(sample.a, sample.b);
  const dH = hueDifference(reference.a, reference.b, sample.a, sample.b);
  return {
    kind: 'colour-difference',
    version: 1,
    dL: sample.L - reference.L,
    da: sample.a - reference.a,
    db: sample.b - reference.b,
    dC: C2 - C1,
    dH,
    dEab,
    dE2000: deltaE2000(reference, sample),
  };
}
