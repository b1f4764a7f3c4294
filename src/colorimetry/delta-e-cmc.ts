import { assertOptions, assertPositive } from '../core/internal.js';
import type { Lab } from './cielab.js';
import { assertLabs, finiteDifference } from './finite-lab.js';
import { hueDifference } from './hue-difference.js';
import { hueAngle } from './lch.js';

/** Weights of lightness and chroma: 2:1 for acceptability, 1:1 for perceptibility. */
export interface DeltaECmcOptions {
  /** @default 2 */
  readonly l?: number | undefined;
  /** @default 1 */
  readonly c?: number | undefined;
}

/**
 * CMC(l:c) colour difference.
 *
 * Asymmetric: the tolerance ellipsoid is that of the reference, so exchanging the two colours gives another figure. Meant for small
 * differences, as between a standard and a batch.
 *
 * @param reference - CIELAB of the standard
 * @param sample - CIELAB under the same white
 * @param options - weights l and c, each > 0; CMC(2:1) unless stated
 * @returns ΔE CMC >= 0
 * @throws TintladderError `not-finite`; `invalid-option` for a weight that is not positive
 * @example deltaECmc({ L: 50, a: 0, b: 0 }, { L: 51, a: 0, b: 0 }, { l: 1 }) // 0.9189
 * @see ISO 105-J03; Clarke, McDonald & Rigg (1984), J. Soc. Dyers Colour. 100
 */
export function deltaECmc(reference: Lab, sample: Lab, options: DeltaECmcOptions = {}): number {
  assertLabs(reference, sample);
  assertOptions(options, ['l', 'c']);
  const { l = 2, c = 1 } = options;
  assertPositive({ l, c });
  const { L, a, b } = reference;
  const C = Math.hypot(a, b);
  const h = hueAngle(a, b);
  const [base, swing, phase] = h >= 164 && h <= 345 ? [0.56, 0.2, 168] : [0.36, 0.4, 35];
  const T = base + Math.abs(swing * Math.cos(((h + phase) * Math.PI) / 180));
  const C4 = C * C * C * C;
  const F = Math.sqrt(C4 / (C4 + 1900));
  const SL = L < 16 ? 0.511 : (0.040975 * L) / (1 + 0.01765 * L);
  const SC = (0.0638 * C) / (1 + 0.0131 * C) + 0.638;
  const SH = SC * (F * T + 1 - F);
  const dL = (sample.L - L) / (l * SL);
  const dC = (Math.hypot(sample.a, sample.b) - C) / (c * SC);
  const dH = hueDifference(a, b, sample.a, sample.b) / SH;
  return finiteDifference(Math.sqrt(dL * dL + dC * dC + dH * dH));
}
