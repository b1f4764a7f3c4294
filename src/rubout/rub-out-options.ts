import type { Viewing } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import { assertArray, assertObject, assertOneOf, assertOptions } from '../core/internal.js';
import type { Repeated } from '../evidence/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { assertSurface } from '../kubelka-munk/internal.js';
import type { RubOutReading } from './area.js';
import type { ColorantChange } from './colorant-changes.js';
import { assertPrecision, type RubOutPrecision } from './precision.js';
import { RUB_OUT_MEASURES, type RubOutMeasure, TINTS, type Tint } from './rub-out-result.js';
import { type RubOutThresholds, thresholdsFrom } from './thresholds.js';

/** Options of `assessRubOut`; `viewing` and `surface` are always stated. */
export interface RubOutOptions {
  /** Illuminant and observer; Lab values must belong to it. */
  readonly viewing: Viewing;
  /** Surface correction for K/S, or `'none'` for readings that are taken as internal reflectance. */
  readonly surface: SurfaceCorrection;
  /** The white base without colorant, of the same kind as the areas. */
  readonly white?: Repeated<RubOutReading> | undefined;
  /** Largest difference that is accepted, in terms of `measure`. Common practice, no source. @default 1 */
  readonly limit?: number | undefined;
  /** @default 'dEab' */
  readonly measure?: RubOutMeasure | undefined;
  /** The laboratory's own history of rub-outs; the larger of it and of what the readings show counts. */
  readonly precision?: RubOutPrecision | undefined;
  /** What is tinted; several pigments where `colorantChanges` names several. @default 'single-pigment' */
  readonly tint?: Tint | undefined;
  /** Change of each colorant from unrubbed to rubbed: `changes` of `resolveColorants` (tintladder/fits). */
  readonly colorantChanges?: readonly ColorantChange[] | undefined;
  /** The unrubbed film over black, and the bare substrates: what shows through can then be weighed. Spectra only. */
  readonly overBlack?: OverBlack | undefined;
  /** Gloss of both areas: it tells whether the surface changed. */
  readonly gloss?: GlossReadings | undefined;
  /** Both areas in the other specular mode, spectra only: what it reads beyond the first is the surface. */
  readonly otherSpecular?: OtherSpecular | undefined;
  /** Any of the lines that are drawn, over {@link RUB_OUT_THRESHOLDS}. */
  readonly thresholds?: Partial<RubOutThresholds> | undefined;
}

/** The unrubbed film over the black part of a card, and what the bare card reflects where the areas lie and where it is black. */
export interface OverBlack {
  readonly film: Repeated<RubOutReading>;
  readonly white: RubOutReading;
  readonly black: RubOutReading;
}

/** Gloss of both areas in gloss units at one angle (ISO 2813), read alike. */
export interface GlossReadings {
  readonly unrubbed: Repeated<number>;
  readonly rubbed: Repeated<number>;
  /** Smallest change of gloss that counts, gloss units. Common practice, no source. @default 2 */
  readonly least?: number | undefined;
}

/** Spectra of both areas, read with the specular reflection included where the areas were read without it, or the other way round. */
export interface OtherSpecular {
  readonly unrubbed: Repeated<RubOutReading>;
  readonly rubbed: Repeated<RubOutReading>;
}

/** Options with their defaults. */
export interface Settings extends RubOutOptions {
  readonly limit: number;
  readonly measure: RubOutMeasure;
  readonly tint: Tint;
  readonly colorantChanges: readonly ColorantChange[];
  readonly lines: RubOutThresholds;
}

const NAMES: readonly string[] = [
  'viewing',
  'surface',
  'white',
  'limit',
  'measure',
  'precision',
  'tint',
  'colorantChanges',
  'overBlack',
  'gloss',
  'otherSpecular',
  'thresholds',
] satisfies (keyof RubOutOptions)[];

/** Common practice, no source. */
const USUAL_LIMIT = 1;

/**
 * Checked options with their defaults.
 *
 * @throws TintladderError `invalid-option`, `invalid-limit`
 */
export function settingsFrom(options: RubOutOptions): Settings {
  assertObject(options, 'options', 'an object with viewing and surface');
  assertOptions(options, NAMES);
  const { surface, precision, limit = USUAL_LIMIT, measure = 'dEab', colorantChanges = [] } = options;
  assertSurface(surface, 'options.surface');
  assertPrecision(precision);
  assertArray(colorantChanges, 'options.colorantChanges');
  if (!(limit > 0 && limit < Number.POSITIVE_INFINITY)) {
    throw new TintladderError('invalid-limit', {
      path: 'options.limit',
      received: limit,
      expected: 'a positive number',
    });
  }
  assertOneOf(measure, RUB_OUT_MEASURES, 'options.measure');
  const lines = thresholdsFrom(options.thresholds);
  if (measure === 'dE2000' && lines.visible > limit) {
    throw new TintladderError('invalid-option', {
      path: 'options.thresholds.visible',
      received: lines.visible,
      expected: `at most the limit, ${limit}`,
      hint: 'Both are ΔE00: a difference that nobody sees can’t be beyond the limit.',
    });
  }
  return { ...options, limit, measure, colorantChanges, lines, tint: tintOf(options) };
}

function tintOf({ tint, colorantChanges = [], white }: RubOutOptions): Tint {
  const several = colorantChanges.length > 1;
  const given = tint ?? (several ? 'several-pigments' : 'single-pigment');
  assertOneOf(given, TINTS, 'options.tint');
  if (several && (given === 'single-pigment' || given === 'white')) {
    throw new TintladderError('invalid-option', {
      path: 'options.tint',
      received: given,
      expected: "'several-pigments' or 'mass-tone'",
      hint: 'colorantChanges names several pigments.',
    });
  }
  if (given === 'mass-tone' && white !== undefined) {
    throw new TintladderError('invalid-option', {
      path: 'options.white',
      received: white,
      expected: 'no white base',
      hint: 'A mass tone holds no white: leave the white out, or state another tint.',
    });
  }
  return given;
}
