import { deltaE2000 } from '../../colorimetry/ciede2000.js';
import { TintladderError } from '../../errors.js';
import { type Dilution, dilutedReflectances, labOf } from '../dilution.js';
import { findMinimum } from '../golden-section.js';
import { scannedFactors } from './scan.js';
import { nearestOrClosestInColour } from './several-roots.js';
import type { Choice, Solution } from './solution.js';

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
  const squared = (logFactor: number) =>
    deltaE2000(target, labOf(bands, dilutedReflectances(dilution, Math.exp(logFactor)))) ** 2;
  const logs = scannedFactors(dilution).map(Math.log);
  const values = logs.map(squared);
  const roots: number[] = [];
  for (let i = 1; i < logs.length - 1; i++) {
    if (values[i] <= values[i - 1] && values[i] < values[i + 1]) {
      roots.push(Math.exp(findMinimum(squared, logs[i - 1], logs[i + 1])));
    }
  }
  const ends = Math.min(values[0], values[values.length - 1]);
  if (roots.length === 0 || roots.every((root) => squared(Math.log(root)) > ends)) {
    throw new TintladderError('no-solution', {
      place: 'trial',
      seen: 'closest in colour at an end of the range of amounts',
      expected: 'an amount of the trial between a thousandth and a thousand times its own, with no negative K/S,',
      mend: 'Does the trial hold the colorant, and is the white base the right one?',
    });
  }
  return { ...nearestOrClosestInColour(dilution, roots, near), choice: {} };
}
