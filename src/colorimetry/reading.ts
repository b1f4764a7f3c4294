import type { Lab } from './cielab.js';
import type { Spectrum } from './spectrum.js';
import type { Viewing } from './viewing.js';
import type { Xyz } from './xyz-from-spectrum.js';

/** Under what conditions a colour was read. What a file or caller doesn't state stays absent; nothing is assumed. */
export interface Conditions {
  /** Illuminant and observer that Lab or XYZ values belong to; a spectrum has none. */
  readonly viewing?: Viewing;
  /** Whether the specular reflection at the surface was read with the rest. */
  readonly specular?: 'included' | 'excluded';
  /** Illumination and viewing geometry as the standards write it, such as `di:8°` or `45°a:0°`. */
  readonly geometry?: string;
  readonly instrument?: string;
}

/** One reading: a colour with its conditions. At least one of `spectrum`, `lab` and `xyz` is there. */
export interface Reading {
  readonly name: string;
  readonly spectrum?: Spectrum;
  readonly lab?: Lab;
  readonly xyz?: Xyz;
  readonly conditions: Conditions;
  /** Which repeat of the same sample this is, as the source says it. */
  readonly replicate?: string;
}
