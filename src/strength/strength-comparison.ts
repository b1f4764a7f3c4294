import { colourDifference } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import { describeRepetition, highestClaim } from '../evidence/internal.js';
import { amountRatio } from './amounts.js';
import { maximumOf, noAbsorption } from './criteria/absorption-maximum.js';
import type { Choice } from './criteria/solution.js';
import { solveCriterion } from './criteria/solve.js';
import type { StrengthCriterion } from './criteria/strength-criterion.js';
import type { Bands } from './reduction/bands.js';
import { addedAbsorption, noteDarkerWhite } from './reduction/colorant-absorption.js';
import { type Dilution, dilutedReflectances, labOf, noteNegativeMatch } from './reduction/dilution.js';
import { absorptionsOf, type Side } from './reduction/side.js';
import { claimHolds, findingOf } from './scatter/finding.js';
import { type AbsorbingSides, scatterInterval } from './scatter/scatter-interval.js';
import { statementOf } from './scatter/statement.js';
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
  given: Sides,
  bands: Bands,
  criterion: StrengthCriterion,
  { viewing, surface, amounts, repeatability, margin, claim: wanted }: ComparisonOptions<unknown>,
): Comparison {
  const absorbing = (side: Side) => ({ ...side, absorptions: absorptionsOf(side, surface, bands) });
  const sides: AbsorbingSides = {
    reference: absorbing(given.reference),
    trial: absorbing(given.trial),
    white: given.white && absorbing(given.white),
  };
  const { reference, trial, white } = sides;
  const whiteRatios = white?.absorptions.mean ?? new Float64Array(bands.count);
  const dilution: Dilution = {
    bands,
    surface,
    white: whiteRatios,
    reference: addedAbsorption(reference.absorptions.mean, whiteRatios),
    trial: addedAbsorption(trial.absorptions.mean, whiteRatios),
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
  const figures = { percent, repeatability };
  const scatter = scatterInterval(criterion, dilution, { ...choice, near: factor }, sides, figures);
  const { interval } = scatter;
  const repetition = {
    reference: describeRepetition(reference.read),
    trial: describeRepetition(trial.read),
    ...(white && { white: describeRepetition(white.read) }),
  };
  const claim = highestClaim([reference.read, trial.read], repeatability === undefined ? [] : ['weighing']);
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
      version: 1,
      percent,
      criterion,
      factor,
      difference: colourDifference(referenceLab, labOf(bands, trial.mean)),
      residual,
      ...(choice.tristimulus && { tristimulus: choice.tristimulus }),
      approximate: false,
      ...(interval && { interval }),
      finding: claimHolds(claim, wanted) ? findingOf(interval, margin) : 'undecided',
      claim,
      repetition,
      statement: statementOf(percent, interval, claim, repetition),
      viewing,
      surface,
      whiteSubtracted: white !== undefined,
      ...(amounts && { amounts }),
      ...(roots && { roots }),
      warnings: notes,
    },
    matched,
    choice,
  };
}
