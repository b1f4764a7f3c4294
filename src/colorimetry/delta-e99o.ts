import { TintladderError } from '../core/index.js';
import type { Lab } from './cielab.js';
import { assertLabs, finiteDifference } from './finite-lab.js';

const COS_26 = 0.898794046299167;
const SIN_26 = 0.4383711467890774;

/** The lightness at which the logarithm ends. */
const DARKEST = -1 / 0.0039;

/** L99o, and e and f scaled to the compressed chroma. Turning the hue back by 26 degrees would change no distance. */
function din99o({ L, a, b }: Lab): { L: number; e: number; f: number } {
  const e = COS_26 * a + SIN_26 * b;
  const f = 0.83 * (COS_26 * b - SIN_26 * a);
  const G = Math.hypot(e, f);
  // C99o / G; its limit for a neutral is 0.075 / 0.0435.
  const scale = (G > 0 ? Math.log1p(0.075 * G) / G : 0.075) / 0.0435;
  return { L: 303.67 * Math.log1p(0.0039 * L), e: scale * e, f: scale * f };
}

/**
 * ΔE99o: the Euclidean distance in the DIN99o space, kE = kCH = 1.
 *
 * Symmetric: neither colour is privileged. Meant for small and medium differences under daylight; the constant 303.67 is taken as the
 * standard prints it (100 / ln 1.39 is 303.671).
 *
 * @param reference - CIELAB; L* > -256
 * @param sample - CIELAB under the same white
 * @returns ΔE99o >= 0
 * @throws TintladderError `not-finite`; `out-of-range` for a lightness so far below 0 that its logarithm does not exist
 * @example deltaE99o({ L: 50, a: 0, b: 0 }, { L: 51, a: 0, b: 0 }) // 0.98944
 * @see DIN 6176:2018; Cui, Luo, Rigg, Roesler & Witt (2002), Color Res. Appl. 27, for the DIN99 family
 */
export function deltaE99o(reference: Lab, sample: Lab): number {
  assertLabs(reference, sample);
  const r = din99o(reference);
  const s = din99o(sample);
  for (const [path, { L }] of Object.entries({ reference, sample })) {
    if (L <= DARKEST) {
      throw new TintladderError('out-of-range', { path: `${path}.L`, received: L, expected: 'a lightness above -256' });
    }
  }
  return finiteDifference(Math.hypot(s.L - r.L, s.e - r.e, s.f - r.f));
}
