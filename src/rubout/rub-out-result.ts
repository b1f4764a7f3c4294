import type { ColourDifference, Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Outcome } from '../decision/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import type { ColorantChange } from './colorant-changes.js';
import type { DifferenceInterval } from './difference-interval.js';
import type { RubOutStrengthChange } from './strength-change.js';
import type { RubOutThresholds } from './thresholds.js';

/** What can make the rubbed area differ from the unrubbed one. */
export const RUB_OUT_CAUSES = [
  'coloured-pigment-flocculated',
  'white-pigment-flocculated',
  'pigments-separated',
  'uneven-film',
] as const;

/** One of {@link RUB_OUT_CAUSES}. */
export type RubOutCause = (typeof RUB_OUT_CAUSES)[number];

/** What a rub-out shows: one cause, none, or a difference that has several causes or none that is known here. */
export const RUB_OUT_DIAGNOSES = [...RUB_OUT_CAUSES, 'none', 'undetermined'] as const;

/** One of {@link RUB_OUT_DIAGNOSES}. */
export type RubOutDiagnosis = (typeof RUB_OUT_DIAGNOSES)[number];

/**
 * How sure a diagnosis is from these readings: `proven` beyond their scatter at 95 %, with one cause left; `indicated` where
 * the scatter is unknown, the direction is within it, or several causes are left; `not-shown` where nothing was found but
 * not enough was read to rule it out. Flocculation itself is seen only under the microscope.
 */
export const RUB_OUT_CERTAINTIES = ['proven', 'indicated', 'not-shown'] as const;

/** One of {@link RUB_OUT_CERTAINTIES}. */
export type RubOutCertainty = (typeof RUB_OUT_CERTAINTIES)[number];

/** A cause that fits the readings, and what would confirm it or tell it from the others. */
export interface PossibleCause {
  readonly cause: RubOutCause;
  /** The pigments that moved, where the tint was resolved into its colorants. */
  readonly pigments: readonly string[];
  readonly because: string;
  readonly check: string;
}

/** One thing that the readings say, as a sentence and as the figures behind it. */
export interface Evidence {
  readonly statement: string;
  readonly figures: Readonly<Record<string, number>>;
}

/** Number of pigments beside the white. */
export const TINTS = ['single-pigment', 'several-pigments'] as const;

/** One of {@link TINTS}. */
export type Tint = (typeof TINTS)[number];

/** What a rub-out shows, how surely, and what to do next. */
export interface RubOutResult {
  /** Unrubbed against rubbed area (means). */
  readonly difference: ColourDifference;
  /** Absent where nothing tells the scatter of the readings. */
  readonly interval?: DifferenceInterval;
  /** Standard deviation of one reading along the difference, ΔE*ab; absent where unknown. */
  readonly readingDeviation?: number;
  /** Absent where the readings have no strength; a warning says why. */
  readonly strengthChange?: RubOutStrengthChange;
  /** Largest ΔE*ab that is accepted. */
  readonly limit: number;
  readonly outcome: Outcome;
  readonly diagnosis: RubOutDiagnosis;
  /** Every cause that fits, the likeliest first; more than one where they leave the same spectra. */
  readonly causes: readonly PossibleCause[];
  readonly certainty: RubOutCertainty;
  /** Whether a pigment was flocculated; absent where the readings leave it open. */
  readonly flocculated?: boolean;
  readonly evidence: readonly Evidence[];
  /** What would settle an open question, first things first. */
  readonly next: readonly string[];
  readonly tint: Tint;
  readonly colorantChanges?: readonly ColorantChange[];
  readonly whiteChange?: Omit<ColorantChange, 'name'>;
  readonly thresholds: RubOutThresholds;
  readonly viewing: Viewing;
  readonly surface?: Surface;
  readonly whiteSubtracted: boolean;
  readonly readings: 'spectra' | 'lab';
  readonly replicates: { readonly unrubbed: number; readonly rubbed: number };
  readonly warnings: readonly Warning[];
}
