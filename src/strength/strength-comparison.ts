import { colourDifference } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import { amountRatio } from './amounts.js';
import { maximumOf, noAbsorption } from './criteria/absorption-maximum.js';
import type { Choice } from './criteria/solution.js';
import { solveCriterion } from './criteria/solve.js';
import type { StrengthCriterion } from './criteria/strength-criterion.js';
import type { Bands } from './reduction/bands.js';
import { addedAbsorption, noteDarkerWhite } from './reduction/colorant-absorption.js';
import { type Dilution, dilutedReflectances, labOf, noteNegativeMatch } from './reduction/dilution.js';
import { absorptionsOf, type Side } from './reduction/side.js';
import { findingOf } from './scatter/finding.js';
import { type ReplicatedSides, scatterInterval } from './scatter/scatter-interval.js';
import { noteSpecularMode } from './specular-mode.js';
import type { ComparisonOptions } from './strength-options.js';
import type { StrengthFigure } from './strength-result.js';

/** The readings of a comparison. */
export interface Sides {
  readonly reference: Side;
  readonly trial: Side;
  readonly white: Side | undefined;
}

/** A strength, the trial matched at it in bands, and the band or tristimulus value it was found at. */
export interface Comparison {
  readonly figure: StrengthFigure;
  readonly matched: Float64Array;
  readonly choice: Choice;
}

/**
 * The strength of the trial's mean against the reference's, with all that the readings say about it.
 *
 * @throws TintladderError what the K/S of a reading, the criterion and the amounts throw
 */
export function compareReductions(
  { reference, trial, white }: Sides,
  bands: Bands,
  criterion: StrengthCriterion,
  { viewing, surface, amounts, repeatability, margin }: ComparisonOptions<unknown>,
): Comparison {
  const nothing = new Float64Array(bands.count);
  const absorptions: ReplicatedSides = {
    reference: absorptionsOf(reference, surface, bands),
    trial: absorptionsOf(trial, surface, bands),
    white: white ? absorptionsOf(white, surface, bands) : { each: [], mean: nothing },
  };
  const dilution: Dilution = {
    bands,
    surface,
    white: absorptions.white.mean,
    reference: addedAbsorption(absorptions.reference.mean, absorptions.white.mean),
    trial: addedAbsorption(absorptions.trial.mean, absorptions.white.mean),
    measuredReference: reference.mean,
  };
  const strongest = maximumOf(dilution);
  if (!(dilution.reference[strongest] > 0)) {
    throw noAbsorption(`reference at ${bands.nameOf(strongest)}`, dilution.reference[strongest]);
  }

  const { factor, choice, roots, warnings } = solveCriterion(criterion, dilution);
  const percent = (100 / factor) * amountRatio(amounts);
  const matched = dilutedReflectances(dilution, factor);
  const referenceLab = labOf(bands, reference.mean);
  const residual = colourDifference(referenceLab, labOf(bands, matched));
  const scatter = scatterInterval(criterion, dilution, { ...choice, near: factor }, absorptions, reference, {
    percent,
    repeatability,
  });
  const notes: Warning[] = [
    ...noteDarkerWhite(dilution.reference, bands, reference.name),
    ...noteDarkerWhite(dilution.trial, bands, trial.name),
    ...warnings,
    ...noteNegativeMatch(dilution, factor),
    ...noteSpecularMode(dilution, trial.mean, residual.dE2000),
    ...scatter.warnings,
  ];
  return {
    figure: {
      percent,
      criterion,
      factor,
      difference: colourDifference(referenceLab, labOf(bands, trial.mean)),
      residual,
      ...(choice.tristimulus && { tristimulus: choice.tristimulus }),
      approximate: false,
      ...(scatter.interval && { interval: scatter.interval }),
      finding: findingOf(scatter.interval, margin),
      viewing,
      ...(surface && { surface }),
      whiteSubtracted: white !== undefined,
      ...(amounts && { amounts }),
      replicates: {
        reference: reference.readings.length,
        trial: trial.readings.length,
        ...(white && { white: white.readings.length }),
      },
      ...(roots && { roots }),
      warnings: notes,
    },
    matched,
    choice,
  };
}
