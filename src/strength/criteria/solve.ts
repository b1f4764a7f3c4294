import type { Dilution } from '../reduction/dilution.js';
import { solveAbsorptionMaximum } from './absorption-maximum.js';
import { solveKubelkaMunkSum, solveWeightedSum } from './absorption-sum.js';
import { solveSmallestDifference } from './smallest-difference.js';
import type { Choice, Solution } from './solution.js';
import type { StrengthCriterion } from './strength-criterion.js';
import { solveLowestTristimulus, solveTristimulusY } from './tristimulus-value.js';

const SOLVERS: Readonly<Record<StrengthCriterion, (dilution: Dilution, choice?: Choice) => Solution>> = {
  'absorption-maximum': solveAbsorptionMaximum,
  'kubelka-munk-sum': solveKubelkaMunkSum,
  'weighted-sum': solveWeightedSum,
  'lowest-tristimulus': solveLowestTristimulus,
  'tristimulus-y': solveTristimulusY,
  'smallest-difference': solveSmallestDifference,
};

/** The factor at which a criterion calls the trial equal to the reference, by its own equation. */
export function solveCriterion(criterion: StrengthCriterion, dilution: Dilution, choice?: Choice): Solution {
  return SOLVERS[criterion](dilution, choice);
}
