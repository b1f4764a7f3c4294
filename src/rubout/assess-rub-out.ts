import { colourDifference, type Lab, labFromSpectrum, meanSpectrum, type Viewing } from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { judge } from '../decision/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import { type AbsorptionChange, absorptionChange } from './absorption-change.js';
import { describeCauses } from './causes.js';
import { type ColorantChange, movementOf } from './colorant-changes.js';
import { differenceScatter } from './difference-interval.js';
import { evidenceOf } from './evidence.js';
import { nextSteps } from './next-steps.js';
import { type Area, areaFrom, assertComparable, type RubOutReading } from './readings.js';
import { type PossibleCause, type RubOutCertainty, type RubOutResult, TINTS, type Tint } from './rub-out-result.js';
import { type Facts, RULES, type Rule } from './rules.js';
import { meanLab, scatterOf } from './scatter.js';
import { type RubOutStrengthChange, strengthChangeOf } from './strength-change.js';
import { type RubOutThresholds, thresholdsFrom } from './thresholds.js';

/** Options of {@link assessRubOut}; `viewing` is always stated. */
export interface RubOutOptions {
  /** Illuminant and observer; Lab values must belong to it. */
  readonly viewing: Viewing;
  /** The white base without colorant, one reading or several, of the same kind as the areas. */
  readonly white?: RubOutReading | readonly RubOutReading[];
  /** Surface correction for the strength change. */
  readonly surface?: Surface;
  /** Largest ΔE*ab that is accepted. Common practice, no source. @default 1 */
  readonly limit?: number;
  /**
   * Standard deviation of one reading in any one direction of CIELAB, ΔE*ab, from earlier work; used where an area has one
   * spot. A root mean square of ΔE*ab over repeated readings is on the safe side.
   */
  readonly repeatability?: number;
  /** Pigments beside the white; several where `colorantChanges` names several. @default 'single-pigment' */
  readonly tint?: Tint;
  /** Change of each colorant from unrubbed to rubbed: `changes` of `resolveColorants` (tintladder/fits). */
  readonly colorantChanges?: readonly ColorantChange[];
  /** Change of the scattering of the white: `white` of `resolveColorants`, only where it is `separable` from the colorants. */
  readonly whiteChange?: Omit<ColorantChange, 'name'>;
  /** Any of the lines that the rules draw, over {@link RUB_OUT_THRESHOLDS}. */
  readonly thresholds?: Partial<RubOutThresholds>;
}

/** Common practice, no source. */
const USUAL_LIMIT = 1;

/**
 * Assesses a rub-out: by how much the rubbed area of a film differs from the unrubbed one, whether that is more than the
 * limit, which pigment is behind it, how sure that is from these readings, and what to check next.
 *
 * Rubbing shears the wet film after flash-off, which takes flocculates apart and mixes what had separated. ΔE*ab of the means
 * is compared with the limit by its 95 % interval (`judge`); a table of rules then looks at noise, at the evenness of the
 * film and at the direction of the change, in this order. Where two causes leave the same spectra both are named and none is
 * chosen. A strength change comes from K/S at the absorption maximum, from Lab approximately.
 *
 * The interval holds every true ΔE*ab under which the one found is no surprise, so noise, which makes ΔE*ab too large near zero,
 * is allowed for. With one spot per side and no `repeatability` there is none: the outcome is `undecided` and no diagnosis is
 * `proven`.
 *
 * @param unrubbed - one reading or several spots, all spectra or all Lab
 * @param rubbed - the same of the rubbed area
 * @param options - viewing, and what is known of white, surface, limit, scatter and pigments
 * @returns difference, interval, outcome, diagnosis with certainty, evidence and next steps. Warning codes:
 * `replicates-identical`, `scatter-borrowed`, `rubbed-uneven`, `no-strength-change`, and those of the strength
 * @throws TintladderError `empty` for a side without a reading; `kinds-mixed` for Lab beside spectra; `grid-mismatch`;
 * `conditions-mismatch` for readings under different conditions; `invalid-limit` for a limit of zero or less;
 * `invalid-option`; `invalid-interval` for a colorant's; `not-finite`; `unknown-illuminant`, `unknown-observer`
 * @example
 * const spots = (L, a, b) => [{ L, a, b }, { L: L + 0.1, a, b: b - 0.1 }, { L: L - 0.1, a: a + 0.1, b }];
 * assessRubOut(spots(62, -8, -34), spots(59.5, -7.6, -36), { viewing: D65_10 }).diagnosis // 'coloured-pigment-flocculated'
 * @example assessRubOut({ L: 60, a: 0, b: 0 }, { L: 60.1, a: 0, b: 0 }, { viewing: D65_10, limit: 0 }) // throws invalid-limit
 * @see ASTM D5326, the nearest published method; the reading of the difference is common practice, no source
 */
export function assessRubOut(
  unrubbed: RubOutReading | readonly RubOutReading[],
  rubbed: RubOutReading | readonly RubOutReading[],
  options: RubOutOptions,
): RubOutResult {
  const { viewing, surface, limit = USUAL_LIMIT, repeatability, colorantChanges = [], whiteChange } = options;
  assertPositive(limit, 'options.limit', 'invalid-limit');
  if (repeatability !== undefined) assertPositive(repeatability, 'options.repeatability', 'invalid-option');
  const thresholds = thresholdsFrom(options.thresholds);
  const tint = tintOf(options);
  const areas = [areaFrom(unrubbed, 'unrubbed', viewing), areaFrom(rubbed, 'rubbed', viewing)] as const;
  assertComparable(areas, [unrubbed, rubbed], viewing);
  const white = whiteOf(options, areas[0]);

  const difference = colourDifference(meanColour(areas[0], viewing), meanColour(areas[1], viewing));
  const scatter = differenceScatter(areas, difference, repeatability);
  const { interval, readingDeviation } = scatter;
  const { strengthChange, warnings } = strengthChangeOf(areas, white, { viewing, surface });
  const outcome = judge(difference.dEab, interval?.dEab, { upper: limit });
  const [unrubbedScatter, rubbedScatter] = areas.map((area) => scatterOf(area).deviation);
  const absorption = absorptionChange(areas, { viewing, surface });
  const facts: Facts = {
    thresholds,
    tint,
    dEab: difference.dEab,
    noise: interval ? (interval.dEab.low > 0 ? 'beyond' : 'within') : 'unknown',
    unrubbedScatter,
    stronger: absorption !== undefined && absorption.rises > absorption.falls,
    lighter: difference.dL > 0,
    shadeShare: shadeShareOf(strengthChange, difference.dEab),
    bothSigns: bothSignsOf(absorption),
    hasAbsorption: absorption !== undefined,
    movements: tint === 'several-pigments' ? colorantChanges.map(movementOf) : [],
    whiteMovement: whiteChange ? movementOf({ name: 'the white', ...whiteChange }) : 'unmoved',
  };
  const rule = ruleFor(facts);
  const causes = describeCauses(rule.causes, colorantChanges);
  const certainty = certaintyOf(rule, facts, interval?.dEab.high, strengthChange);
  const replicates = { unrubbed: areas[0].labs.length, rubbed: areas[1].labs.length };
  const unevenRubbed = (rubbedScatter ?? 0) >= thresholds.unevenness;
  const flocculated = flocculatedOf(causes, certainty, rule);
  return {
    difference,
    ...(interval && { interval }),
    ...(readingDeviation !== undefined && { readingDeviation }),
    ...(strengthChange && { strengthChange }),
    limit,
    outcome,
    diagnosis: rule.diagnosis,
    causes,
    certainty,
    ...(flocculated !== undefined && { flocculated }),
    evidence: evidenceOf({
      difference,
      interval,
      limit,
      outcome,
      strengthChange,
      scatter: { unrubbed: unrubbedScatter, rubbed: rubbedScatter },
      replicates,
      colorantChanges,
      whiteChange,
      reason: rule.reason,
    }),
    next: nextSteps({
      outcome,
      diagnosis: rule.diagnosis,
      certainty,
      causes,
      noise: facts.noise,
      replicates,
      unevenRubbed,
    }),
    tint,
    ...(colorantChanges.length > 0 && { colorantChanges }),
    ...(whiteChange && { whiteChange }),
    thresholds,
    viewing,
    ...(surface && { surface }),
    whiteSubtracted: white !== undefined,
    readings: areas[0].spectra ? 'spectra' : 'lab',
    replicates,
    warnings: [...scatter.warnings, ...warnings, ...(unevenRubbed ? [noteUnevenRubbed(rubbedScatter ?? 0)] : [])],
  };
}

function ruleFor(facts: Facts): Rule {
  const rule = RULES.find(({ when }) => when(facts));
  // The last line of the table always applies.
  return rule ?? RULES[RULES.length - 1];
}

function bothSignsOf({ rises, falls }: AbsorptionChange = { rises: 0, falls: 0 }): number {
  const larger = Math.max(rises, falls);
  return larger > 0 ? Math.min(rises, falls) / larger : 0;
}

/** Without a strength a change of one sign may still be one of strength: the sign decides, nothing speaks against it. */
function shadeShareOf(strengthChange: RubOutStrengthChange | undefined, dEab: number): number {
  return strengthChange && dEab > 0 ? strengthChange.residualDEab / dEab : 0;
}

function certaintyOf(
  { diagnosis, causes }: Rule,
  { noise, thresholds, unrubbedScatter = 0 }: Facts,
  high: number | undefined,
  strengthChange: RubOutStrengthChange | undefined,
): RubOutCertainty {
  if (diagnosis === 'none') return high !== undefined && high <= thresholds.visible ? 'proven' : 'not-shown';
  if (diagnosis === 'uneven-film') return 'proven';
  const { low: least, high: most } = strengthChange?.interval ?? { low: 1, high: 1 };
  const directed = diagnosis === 'pigments-separated' || least > 0 || most < 0;
  const even = unrubbedScatter < thresholds.unevenness;
  return noise === 'beyond' && even && causes.length === 1 && directed ? 'proven' : 'indicated';
}

function flocculatedOf(causes: readonly PossibleCause[], certainty: RubOutCertainty, { diagnosis }: Rule) {
  if (diagnosis === 'none') return certainty === 'proven' ? false : undefined;
  return causes.length > 0 && causes.every(({ cause }) => cause.endsWith('-flocculated')) ? true : undefined;
}

function meanColour({ labs, spectra }: Area, viewing: Viewing): Lab {
  return spectra ? labFromSpectrum(meanSpectrum(spectra), viewing) : meanLab(labs);
}

function whiteOf({ white, viewing }: RubOutOptions, unrubbed: Area): Area | undefined {
  if (white === undefined) return undefined;
  const area = areaFrom(white, 'options.white', viewing);
  if ((area.spectra === undefined) !== (unrubbed.spectra === undefined)) {
    throw new TintladderError('kinds-mixed', {
      path: 'options.white',
      received: area.spectra ? 'spectrum' : 'lab',
      expected: 'the kind of colour of the areas',
    });
  }
  if (area.spectra && unrubbed.spectra) assertSameGrid(unrubbed.spectra[0], area.spectra[0], 'options.white');
  return area;
}

function tintOf({ tint, colorantChanges = [] }: RubOutOptions): Tint {
  const several = colorantChanges.length > 1;
  const given = tint ?? (several ? 'several-pigments' : 'single-pigment');
  if (!TINTS.includes(given) || (several && given === 'single-pigment')) {
    throw new TintladderError('invalid-option', {
      path: 'options.tint',
      received: given,
      expected: several ? "'several-pigments'" : TINTS.map((name) => `'${name}'`).join(' or '),
      hint: several ? 'colorantChanges names several pigments.' : undefined,
    });
  }
  return given;
}

function assertPositive(value: number, path: string, code: 'invalid-limit' | 'invalid-option'): void {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return;
  throw new TintladderError(code, { path, received: value, expected: 'a positive number of ΔE*ab' });
}

function noteUnevenRubbed(deviation: number): Warning {
  return {
    code: 'rubbed-uneven',
    message: `The spots of the rubbed area lie ΔE*ab ${deviation.toFixed(2)} from their mean: it was rubbed unevenly.`,
    path: 'rubbed',
  };
}
