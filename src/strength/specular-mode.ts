import { deltaE2000 } from '../colorimetry/index.js';
import { TintladderError, type Warning } from '../core/index.js';
import { solveAbsorptionMaximum } from './criteria/absorption-maximum.js';
import { absorptionOf, addedAbsorption } from './reduction/colorant-absorption.js';
import { type Dilution, dilutedLab, labOf } from './reduction/dilution.js';

/** k1 of a binder of refractive index 1.5, where no surface is stated. */
const USUAL_EXTERNAL = 0.04;
// A residual below this is no cause for doubt; one that falls below it, and by this factor, is no coincidence. The package's own
// limits: they find most pairs that were read in different modes and one in a hundred of those that differ in shade.
const DOUBTFUL = 0.5;
const FALL = 4;

/**
 * A note where the trial fits the reference far better once the surface reflection is added to its reading or taken from
 * it: one of the two was then most likely read with the specular reflection and the other without.
 *
 * @param measuredTrial - reflectances of the trial as measured
 * @param residual - ΔE00 of the match that was found
 */
export function noteSpecularMode(dilution: Dilution, measuredTrial: Float64Array, residual: number): Warning[] {
  if (!(residual > DOUBTFUL)) return [];
  const { surface } = dilution;
  const external = (surface !== 'none' && surface.external) || USUAL_EXTERNAL;
  for (const [shift, mode] of [
    [external, 'excluded'],
    [-external, 'included'],
  ] as const) {
    if (!(residualOfShifted(dilution, measuredTrial, shift) < Math.min(DOUBTFUL, residual / FALL))) continue;
    const other = mode === 'excluded' ? 'included' : 'excluded';
    return [
      {
        code: 'specular-modes-differ',
        message:
          `The trial would fit the reference at least ${FALL} times better if it had been read with specular reflection ` +
          `${mode} and the reference with it ${other}. Check the mode of both readings.`,
        path: 'trial',
        figures: { trialMode: mode, referenceMode: other },
      },
    ];
  }
  return [];
}

function residualOfShifted(dilution: Dilution, measuredTrial: Float64Array, shift: number): number {
  const { bands, surface, white, measuredReference } = dilution;
  try {
    const shifted = absorptionOf(
      measuredTrial.map((value) => value + shift),
      surface,
      bands,
      'trial',
    );
    const candidate = { ...dilution, trial: addedAbsorption(shifted, white) };
    const { factor } = solveAbsorptionMaximum(candidate);
    return deltaE2000(labOf(bands, measuredReference), dilutedLab(candidate, factor));
  } catch (error) {
    // A trial that is impossible in the other mode was read in this one.
    if (error instanceof TintladderError) return Number.POSITIVE_INFINITY;
    throw error;
  }
}
