import { labFromSpectrum, meanSpectrum, type Spectrum } from '../colorimetry/index.js';
import { assessRubOut } from '../rubout/index.js';
import { spotsOf } from '../rubout/internal.js';
import {
  compareStrengthCriteria,
  relativeTintingStrength,
  type StrengthOptions,
  type StrengthResult,
} from '../strength/index.js';
import { cellFigures, suppliedFigures } from './cell-figures.js';
import { judgeFigures, outcomeOf } from './judge-figures.js';
import { residualInterval } from './residual-interval.js';
import type { Cell, StorageResult } from './result.js';
import type { CellReadings } from './select-readings.js';
import type { Study, StudyPackage, StudyPaint } from './study.js';

/** What one package in one paint is evaluated from. */
export interface CellInput {
  readonly item: StudyPackage;
  readonly paint: StudyPaint;
  readonly own: CellReadings;
  readonly reference: CellReadings;
  readonly white: readonly Spectrum[];
}

/** Everything that can be said of one package in one paint. */
export function evaluateCell(study: Study, { item, paint, own, reference, white }: CellInput): Cell {
  const { viewing, surface, repeatability, strengthCriterion: criterion } = study;
  const isReference = item.id === study.reference;
  const options: StrengthOptions = {
    criterion,
    viewing,
    surface: surface ?? 'none',
    white: white.length > 0 ? spotsOf(white) : undefined,
    repeatability: repeatability?.strength,
  };
  const means = meansOf(own, reference, white);
  const found = isReference
    ? undefined
    : relativeTintingStrength(spotsOf(reference.unrubbed), spotsOf(own.unrubbed), options);
  // the other criteria are there to be seen side by side; their intervals would cost most of the time and tell nothing new
  const compared = isReference ? undefined : compareStrengthCriteria(means.reference, means.unrubbed, options);
  const rubOut = rubOutOf(study, own.unrubbed, own.rubbed, white);
  const storage = storageOf(study, own, options, white);
  const matched = found?.matched;
  const findings = {
    strength: found && {
      ...withoutSpectrum(found),
      residualInterval: residualInterval(reference.unrubbed, own.unrubbed, options),
    },
    rubOut,
    storage,
  };
  const figures = [...cellFigures(findings, isReference), ...suppliedFigures(study, item, paint.id)];
  const judgements = judgeFigures(figures, study.criteria, item.id, paint.id);
  const lab = (spectrum: Spectrum) => labFromSpectrum(spectrum, viewing);
  const plain = (spectrum: Spectrum | undefined) => spectrum && Array.from(spectrum.values);
  return {
    package: item.id,
    paint: paint.id,
    replicates: { unrubbed: own.unrubbed.length, rubbed: own.rubbed.length },
    ...findings,
    strengthByCriterion:
      compared && Object.fromEntries(compared.results.map((result) => [result.criterion, result.percent])),
    shadeChange: compared?.shadeChange,
    figures,
    judgements,
    outcome: outcomeOf(judgements),
    colours: {
      reference: lab(means.reference),
      unrubbed: lab(means.unrubbed),
      rubbed: means.rubbed && lab(means.rubbed),
      matched: matched && lab(matched),
    },
    spectra: {
      grid: { start: means.unrubbed.start, step: means.unrubbed.step, count: means.unrubbed.values.length },
      reference: Array.from(means.reference.values),
      unrubbed: Array.from(means.unrubbed.values),
      rubbed: plain(means.rubbed),
      matched: plain(matched),
      white: plain(means.white),
    },
  };
}

function meansOf(own: CellReadings, reference: CellReadings, white: readonly Spectrum[]) {
  return {
    reference: meanSpectrum(reference.unrubbed),
    unrubbed: meanSpectrum(own.unrubbed),
    rubbed: own.rubbed.length > 0 ? meanSpectrum(own.rubbed) : undefined,
    white: white.length > 0 ? meanSpectrum(white) : undefined,
  };
}

function rubOutOf(
  study: Study,
  unrubbed: readonly Spectrum[],
  rubbed: readonly Spectrum[],
  white: readonly Spectrum[],
) {
  if (unrubbed.length === 0 || rubbed.length === 0) return undefined;
  const { viewing, surface = 'none', repeatability, criteria, tint = 'single-pigment' } = study;
  const spots = (readings: readonly Spectrum[]) => ({ spot: readings });
  return assessRubOut(spots(unrubbed), spots(rubbed), {
    viewing,
    surface,
    white: white.length > 0 ? spots(white) : undefined,
    precision: repeatability?.colour === undefined ? undefined : { spot: repeatability.colour },
    tint,
    limit: criteria.find(({ quantity }) => quantity === 'rub-out')?.upper,
  });
}

function storageOf(
  study: Study,
  own: CellReadings,
  options: StrengthOptions,
  white: readonly Spectrum[],
): StorageResult | undefined {
  if (own.storedUnrubbed.length === 0) return undefined;
  const strength = withoutSpectrum(
    relativeTintingStrength(spotsOf(own.unrubbed), spotsOf(own.storedUnrubbed), options),
  );
  return { strength, rubOut: rubOutOf(study, own.storedUnrubbed, own.storedRubbed, white) };
}

/** The cell holds its spectra as plain numbers; a typed array has no JSON of its own. */
function withoutSpectrum({ matched: _, ...rest }: StrengthResult): Omit<StrengthResult, 'matched'> {
  return rest;
}
