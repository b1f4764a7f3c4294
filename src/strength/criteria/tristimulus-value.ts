import type { Xyz } from '../../colorimetry/index.js';
import { TintladderError, type Warning } from '../../core/index.js';
import { tristimulusOf } from '../reduction/bands.js';
import { type Dilution, dilutedTristimulus } from '../reduction/dilution.js';
import { findRoots, scannedFactors, solutionsNear } from './scan.js';
import { nearestOrClosestInColour } from './several-roots.js';
import type { Choice, Solution } from './solution.js';

type Tristimulus = keyof Xyz;

/** Two tristimulus values, relative to white, this close leave the choice between them to chance. */
const TOO_CLOSE = 0.02;

/**
 * The tristimulus value of the reference that is lowest relative to the white point, made equal in the trial.
 *
 * @throws TintladderError `no-absorption`, `no-solution` as {@link solveTristimulusY}
 * @see ISO 18314-2:2023 for the smallest of X, Y and Z; taking them relative to the white point, which makes them comparable, is our own step
 */
export function solveLowestTristimulus(dilution: Dilution, choice: Choice = {}): Solution {
  const { bands, measuredReference } = dilution;
  const xyz = tristimulusOf(bands, measuredReference);
  const relative = (['X', 'Y', 'Z'] as const)
    .map((name) => ({ name, value: xyz[name] / bands.white[name] }))
    .sort((one, other) => one.value - other.value);
  const [lowest, second] = relative;
  const warnings: Warning[] = [];
  if (second.value - lowest.value < TOO_CLOSE * second.value) {
    warnings.push({
      code: 'near-neutral',
      message: `${lowest.name} and ${second.name} of the reference are lowest within 2 %, so the choice is arbitrary.`,
      path: lowest.name,
      figures: { lowest: [lowest.name, second.name] },
    });
  }
  const solution = solveTristimulus(dilution, choice.tristimulus ?? lowest.name, choice.near);
  return { ...solution, warnings: [...warnings, ...solution.warnings] };
}

/**
 * Tristimulus value Y of the trial made equal to the reference's.
 *
 * @throws TintladderError `no-absorption` if the reference is no darker than the white base; `no-solution` if no amount
 * of the trial is as dark
 * @see ISO 18314-2:2023 for tristimulus value Y and for the smallest of the three
 */
export function solveTristimulusY(dilution: Dilution, { near }: Choice = {}): Solution {
  return solveTristimulus(dilution, 'Y', near);
}

function solveTristimulus(dilution: Dilution, name: Tristimulus, near: number | undefined): Solution {
  const { bands, measuredReference } = dilution;
  const target = tristimulusOf(bands, measuredReference)[name];
  const excess = (factor: number) => dilutedTristimulus(dilution, factor)[name] - target;
  const white = excess(0) + target;
  if (!(target < white)) {
    throw new TintladderError('no-absorption', {
      path: `${name} of the reference`,
      received: target,
      expected: `a value below that of the white base, ${white}`,
      hint: 'Is the white base the one that both reductions were made with?',
    });
  }
  const roots = solutionsNear(near, (close) => findRoots(scannedFactors(dilution, close), excess));
  if (roots.length === 0) {
    throw new TintladderError('no-solution', {
      path: `${name} of the trial`,
      received: excess(1) + target,
      expected: `an amount of the trial that gives ${target}`,
      hint: 'Does the trial hold the colorant, and is the white base the right one?',
    });
  }
  return { ...nearestOrClosestInColour(dilution, roots, near), choice: { tristimulus: name } };
}
