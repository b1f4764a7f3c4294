import { assertOneOf, assertOptions } from '../core/internal.js';
import type { Lab } from './cielab.js';
import { assertLabs, finiteDifference } from './finite-lab.js';
import { hueDifference } from './hue-difference.js';

/** What is judged with ΔE94. */
export interface DeltaE94Options {
  /** @default 'graphic-arts' */
  readonly application?: 'graphic-arts' | 'textiles' | undefined;
}

/** Parametric factor kL and the slopes of SC and SH. */
const APPLICATIONS = {
  'graphic-arts': { kL: 1, K1: 0.045, K2: 0.015 },
  // CIE 116 gives kL = 2 for textiles; these slopes with it are common practice, no source.
  textiles: { kL: 2, K1: 0.048, K2: 0.014 },
};

/**
 * CIE 1994 colour difference.
 *
 * Asymmetric: the weights come from the chroma of the reference, so exchanging the two colours gives another figure. Meant for differences up to
 * about 5 CIELAB units.
 *
 * @param reference - CIELAB of the standard
 * @param sample - CIELAB under the same white
 * @param options - application; `graphic-arts` (kL 1, slopes 0.045 and 0.015, the values of CIE 116) or `textiles` (kL 2, slopes 0.048 and
 * 0.014, common practice)
 * @returns ΔE94 >= 0
 * @throws TintladderError `not-finite`; `invalid-option` for an unknown application
 * @example deltaE94({ L: 50, a: 40, b: 0 }, { L: 50, a: 45, b: 0 }) // 1.7857
 * @see CIE 116-1995
 */
export function deltaE94(reference: Lab, sample: Lab, options: DeltaE94Options = {}): number {
  assertLabs(reference, sample);
  assertOptions(options, ['application']);
  const { application = 'graphic-arts' } = options;
  assertOneOf(application, ['graphic-arts', 'textiles'], 'options.application');
  const { kL, K1, K2 } = APPLICATIONS[application];
  const C1 = Math.hypot(reference.a, reference.b);
  const l = (sample.L - reference.L) / kL;
  const c = (Math.hypot(sample.a, sample.b) - C1) / (1 + K1 * C1);
  const h = hueDifference(reference.a, reference.b, sample.a, sample.b) / (1 + K2 * C1);
  return finiteDifference(Math.sqrt(l * l + c * c + h * h));
}
