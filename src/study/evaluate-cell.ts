import { labFromSpectrum, type Spectrum } from '../colorimetry/index.js';
import type { Interval } from '../decision/index.js';
import type { LevelScatter, Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import { assessRubOut, type RubOutResult } from '../rubout/index.js';
import { compareStrengthCriteria, type StrengthResult } from '../strength/index.js';
import { cellFigures, suppliedFigures } from './cell-figures.js';
import { judgeFigures, outcomeOf } from './judge-figures.js';
import { meanOfUnits, readingsOf, topUnitsOf } from './nest-assigned.js';
import type { PaintColours } from './paint-colours.js';
import type { Cell, StorageResult, StrengthSummary } from './result.js';
import type { CellReadings, RubbedDrawdowns } from './select-readings.js';
import { spectralBasis } from './strength-basis.js';
import type { StrengthComparison } from './strength-evidence.js';
import type { Study, StudyPackage, StudyPaint } from './study.js';

/** What one package in one paint is evaluated from. */
export interface CellInput {
  readonly item: StudyPackage;
  readonly paint: StudyPaint;
  readonly own: CellReadings & { readonly unrubbed: Repeated<Measurement> };
  /** Of the reference and of the white. */
  readonly colours: PaintColours;
  readonly white: Repeated<Measurement> | undefined;
  /** Against the reference package, as all packages were compared. */
  readonly comparison: StrengthComparison | undefined;
  /** Of the units that were made anew in this paint. */
  readonly scatter: LevelScatter | undefined;
  /** The stored readings against the fresh ones. */
  readonly storage: StrengthComparison | undefined;
}

type Nest = Repeated<Measurement>;

/** Everything that can be said of one package in one paint. */
export function evaluateCell(study: Study, input: CellInput): Cell {
  const { item, paint, own, white, colours, comparison } = input;
  const { viewing } = study;
  const surface = study.surface;
  const isReference = item.id === study.reference;
  const basis = spectralBasis(study);
  const meanOf = (nest: Nest) => meanOfUnits(nest, basis);
  const means = {
    reference: colours.reference,
    unrubbed: meanOf(own.unrubbed),
    rubbed: own.rubOut && meanOf(own.rubOut.rubbed),
    white: colours.white,
  };
  const found = isReference ? undefined : basis.strength(means.reference, means.unrubbed, means.white);
  const compared = isReference
    ? undefined
    : compareStrengthCriteria(means.reference, means.unrubbed, { viewing, surface, white: means.white });
  const residual = found && colours.residualInterval(topUnitsOf(own.unrubbed).map(meanOf));
  const summary = found && summaryOf(found, comparison);
  const findings = {
    ...(summary && { strength: { ...summary, ...(residual && { residualInterval: residual }) } }),
    ...rubOutOf(study, own.rubOut, white),
    ...storageOf(study, input, meanOf),
  };
  const figures = [...cellFigures(findings, isReference, input.scatter), ...suppliedFigures(study, item, paint.id)];
  const judgements = judgeFigures(figures, study, item.id, paint.id);
  const lab = (spectrum: Spectrum) => labFromSpectrum(spectrum, viewing);
  const plain = (spectrum: Spectrum) => Array.from(spectrum.values);
  const matched = found?.matched;
  return {
    package: item.id,
    paint: paint.id,
    replicates: { unrubbed: readingsOf(own.unrubbed).length, rubbed: readingsOf(own.rubOut?.rubbed).length },
    ...findings,
    ...(compared && {
      strengthByCriterion: Object.fromEntries(compared.results.map((result) => [result.criterion, result.percent])),
      shadeChange: compared.shadeChange,
    }),
    figures,
    judgements,
    outcome: outcomeOf(judgements),
    colours: {
      reference: lab(means.reference),
      unrubbed: lab(means.unrubbed),
      ...(means.rubbed && { rubbed: lab(means.rubbed) }),
      ...(matched && { matched: lab(matched) }),
    },
    spectra: {
      grid: { start: means.unrubbed.start, step: means.unrubbed.step, count: means.unrubbed.values.length },
      reference: plain(means.reference),
      unrubbed: plain(means.unrubbed),
      ...(means.rubbed && { rubbed: plain(means.rubbed) }),
      ...(matched && { matched: plain(matched) }),
      ...(means.white && { white: plain(means.white) }),
    },
  };
}

/** Of the readings with their conditions: an area read specular excluded is no match for one read included. */
function rubOutOf(
  study: Study,
  areas: RubbedDrawdowns | undefined,
  white: Nest | undefined,
): { readonly rubOut?: RubOutResult } {
  if (areas === undefined) return {};
  const { viewing, precision, criteria, tint = 'single-pigment' } = study;
  const limit = criteria.find(({ quantity }) => quantity === 'rub-out')?.upper;
  const { drawdown, spot, degreesOfFreedom } = precision?.rubOut ?? {};
  const rubOut = assessRubOut(areas.unrubbed, areas.rubbed, {
    viewing,
    surface: study.surface,
    tint,
    ...(white && { white }),
    ...(spot !== undefined && { precision: { spot, drawdown, degreesOfFreedom } }),
    ...(limit !== undefined && { limit }),
  });
  return { rubOut };
}

function storageOf(
  study: Study,
  { own, white, colours, storage }: CellInput,
  meanOf: (nest: Nest) => Spectrum,
): { readonly storage?: StorageResult } {
  if (own.storedUnrubbed === undefined) return {};
  const found = spectralBasis(study).strength(meanOf(own.unrubbed), meanOf(own.storedUnrubbed), colours.white);
  return {
    storage: {
      strength: summaryOf(found, storage && around(found.percent, storage)),
      ...rubOutOf(study, own.storedRubOut, white),
    },
  };
}

/**
 * The strength of the means with what the comparison of all packages says of it, in the place of what the means alone could. The cell holds its
 * spectra as plain numbers; a typed array has no JSON of its own.
 */
function summaryOf(
  { matched: _, repetition: _ofMeans, ...found }: StrengthResult,
  comparison: StrengthComparison | undefined,
): StrengthSummary {
  if (!comparison) return found;
  const { interval: _interval, ...rest } = found;
  const { trial: _trial, reference: _reference, ...compared } = comparison;
  return { ...rest, ...compared };
}

/** A comparison that was made against another reference, around the strength that the two sides show between themselves. */
function around(percent: number, comparison: StrengthComparison): StrengthComparison {
  const ratio = percent / comparison.percent;
  const scaled = ({ low, high }: Interval): Interval => ({ low: low * ratio, high: high * ratio });
  const { interval, joint, standardDeviation } = comparison;
  return {
    ...comparison,
    percent,
    ...(interval && { interval: scaled(interval) }),
    ...(joint && { joint: scaled(joint) }),
    ...(standardDeviation !== undefined && { standardDeviation: standardDeviation * ratio }),
  };
}
