import type { ColourDifference, Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Outcome } from '../decision/index.js';
import type { Repetition } from '../evidence/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import type { ColorantChange } from './colorant-changes.js';
import type { DifferenceInterval } from './difference-interval.js';
import type { WeighedCause } from './rub-out-cause.js';
import type { RubOutStrengthChange } from './strength-change.js';
import type { RubOutThresholds } from './thresholds.js';
import type { Evenness } from './unevenness.js';

/**
 * What the readings show: `none-visible` where the whole interval lies below what the eye sees, otherwise a `difference` beyond their scatter,
 * or `open` where neither is shown.
 */
export const RUB_OUT_FINDINGS = ['difference', 'none-visible', 'open'] as const;

/** One of {@link RUB_OUT_FINDINGS}. */
export type RubOutFinding = (typeof RUB_OUT_FINDINGS)[number];

/**
 * Which way rubbing moved the colour: to `more-colour` (stronger), to `more-white` (weaker), or to `another-shade`, where the change is mostly
 * none of strength.
 */
export const RUB_OUT_DIRECTIONS = ['more-colour', 'more-white', 'another-shade'] as const;

/** How sure a direction is: `proven` beyond the scatter of the readings at 95 %, or `indicated`. */
export const DIRECTION_CERTAINTIES = ['proven', 'indicated'] as const;

/** The direction of a rub-out, and how sure it is. */
export interface RubOutDirection {
  readonly towards: (typeof RUB_OUT_DIRECTIONS)[number];
  readonly certainty: (typeof DIRECTION_CERTAINTIES)[number];
}

/** One thing that the readings say, as a sentence and as the figures behind it. */
export interface Evidence {
  readonly statement: string;
  readonly figures: Readonly<Record<string, number>>;
}

/** What is tinted: a white with one colorant or with several, colorants without a white, or the white by itself. */
export const TINTS = ['single-pigment', 'several-pigments', 'mass-tone', 'white'] as const;

/** One of {@link TINTS}. */
export type Tint = (typeof TINTS)[number];

/** The colour difference that the limit speaks of. */
export const RUB_OUT_MEASURES = ['dEab', 'dE2000'] as const;

/** One of {@link RUB_OUT_MEASURES}. */
export type RubOutMeasure = (typeof RUB_OUT_MEASURES)[number];

/** What rubbing changed in the spectrum: beside the `curve` of each cause it shows why a cause fits. */
export interface MeasuredChange {
  /** nm */
  readonly wavelengths: readonly number[];
  /** Measured reflectance, rubbed minus unrubbed, as fractions. */
  readonly change: readonly number[];
  /** Standard deviation of `change`; absent where nothing shows the scatter. */
  readonly deviation?: readonly number[];
}

/** What a rub-out shows, how surely, and what to do next. */
export interface RubOutResult {
  readonly kind: 'rub-out';
  readonly version: 1;
  /** Unrubbed against rubbed area: means over the drawdowns. */
  readonly difference: ColourDifference;
  /** Absent where nothing shows the scatter of the readings. */
  readonly interval?: DifferenceInterval;
  /** Standard deviation of one reading, or of one pair of areas, along the difference, ΔE*ab; absent where unknown. */
  readonly readingDeviation?: number;
  /** Covariance of the mean difference in L*, a*, b*, row by row: nine values. */
  readonly covariance?: readonly number[];
  /** Absent where the readings have no strength; a warning says why. */
  readonly strengthChange?: RubOutStrengthChange;
  /** Largest difference that is accepted, in terms of `measure`. */
  readonly limit: number;
  readonly measure: RubOutMeasure;
  readonly outcome: Outcome;
  readonly finding: RubOutFinding;
  /** Whether the difference found is at least what the eye sees, by ΔE00. */
  readonly visible: boolean;
  /** Where a difference is shown and has a direction. */
  readonly direction?: RubOutDirection;
  /** Every cause with how it stands; empty where no difference is shown that would need one. */
  readonly causes: readonly WeighedCause[];
  /** Where spectra were read. */
  readonly spectrum?: MeasuredChange;
  readonly evenness: { readonly unrubbed: Evenness; readonly rubbed: Evenness };
  readonly evidence: readonly Evidence[];
  /** What would settle an open question, first things first. */
  readonly next: readonly string[];
  readonly tint: Tint;
  readonly colorantChanges?: readonly ColorantChange[];
  readonly thresholds: RubOutThresholds;
  readonly viewing: Viewing;
  readonly surface: SurfaceCorrection;
  readonly whiteSubtracted: boolean;
  readonly readings: 'spectra' | 'lab';
  /** What the result speaks of: `paint` where several drawdowns were rubbed out, otherwise this `film`. */
  readonly claim: 'film' | 'paint';
  readonly repetition: { readonly unrubbed: Repetition; readonly rubbed: Repetition };
  readonly warnings: readonly Warning[];
}
