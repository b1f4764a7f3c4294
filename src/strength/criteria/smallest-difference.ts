import { deltaE2000 } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import { type Dilution, dilutedLab, factorRange, labOf } from '../reduction/dilution.js';
import { findMinima, scannedFactors, solutionsNear } from './scan.js';
import { nearestOrClosestInColour } from './several-roots.js';
import type { Choice, Solution } from './solution.js';

/** Another minimum is named as a solution if its ΔE00 is no more than this above the least. */
const RIVAL = 1;

/**
 * The amount of the trial whose CIEDE2000 difference from the reference is smallest.
 *
 * ΔE00 itself has a kink where it reaches zero; its square is smooth there and is what is minimised.
 *
 * @throws TintladderError `no-solution` if the difference only falls towards an end of the range: a trial without
 * absorption, or another white
 * @see ISO/CIE 11664-6 for the difference; common practice as a criterion
 */
export function solveSmallestDifference(dilution: Dilution, { near }: Choice = {}): Solution {
  const { bands, measuredReference } = dilution;
  const target = labOf(bands, measuredReference);
  const squared = (factor: number) => deltaE2000(target, dilutedLab(dilution, factor)) ** 2;
  const minima = solutionsNear(near, (close) => findMinima(scannedFactors(dilution, close), squared));
  const { low, high } = factorRange(dilution);
  const ends = Math.min(squared(low), squared(high));
  if (!minima.some((factor) => squared(factor) <= ends)) {
    throw new TintladderError('no-solution', {
      path: 'trial',
      received: squared(low) < squared(high) ? low : high,
      expected:
        'a factor on its amount inside a thousandth to a thousand, closest in colour there, with no negative K/S',
      hint: 'Does the trial hold the colorant, and is the white base the right one?',
    });
  }
  const least = Math.sqrt(Math.min(...minima.map(squared)));
  const rivals = minima.filter((factor) => Math.sqrt(squared(factor)) <= least + RIVAL);
  return { ...nearestOrClosestInColour(dilution, rivals, near), choice: {} };
}
