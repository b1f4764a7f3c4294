import { TintladderError, type Warning } from '../../core/index.js';
import type { Choice } from '../criteria/solution.js';
import { solveCriterion } from '../criteria/solve.js';
import type { StrengthCriterion } from '../criteria/strength-criterion.js';
import { addedAbsorption } from '../reduction/colorant-absorption.js';
import type { Dilution } from '../reduction/dilution.js';
import type { Side } from '../reduction/side.js';
import {
  intervalFromRepeatability,
  intervalFromReplicates,
  type ReplicateLogs,
  type StrengthInterval,
} from './strength-interval.js';

/** K/S of the mean and of each reading of every side. */
export interface ReplicatedSides {
  readonly reference: Absorptions;
  readonly trial: Absorptions;
  readonly white: Absorptions;
}

interface Absorptions {
  readonly each: readonly Float64Array[];
  readonly mean: Float64Array;
}

/**
 * The interval of a strength from its replicates where both sides have them, otherwise from the stated repeatability, otherwise
 * from the one side that has replicates.
 *
 * A single reading's figure is the strength with this one reading in the place of its side's mean, by the same criterion at
 * the same wavelength or tristimulus value. So scatter that is common to all wavelengths of a film, which is most of it,
 * counts once, and every criterion is treated alike.
 */
export function scatterInterval(
  criterion: StrengthCriterion,
  means: Dilution,
  choice: Choice,
  sides: ReplicatedSides,
  reference: Side,
  { percent, repeatability }: { percent: number; repeatability: number | undefined },
): { interval?: StrengthInterval; warnings: readonly Warning[] } {
  const counts = [sides.reference.each.length, sides.trial.each.length];
  const single = counts.some((count) => count === 1);
  if (single && repeatability !== undefined) {
    return { interval: intervalFromRepeatability(percent, repeatability, counts), warnings: [] };
  }
  if (counts.every((count) => count === 1)) return { warnings: [] };
  let logs: { reference: ReplicateLogs; trial: ReplicateLogs; white: ReplicateLogs };
  try {
    const logOf = (dilution: Dilution) => -Math.log(solveCriterion(criterion, dilution, choice).factor);
    logs = {
      reference: sides.reference.each.map((ratios, i) =>
        logOf({
          ...means,
          reference: addedAbsorption(ratios, means.white),
          measuredReference: reference.readings[i],
        }),
      ),
      trial: sides.trial.each.map((ratios) => logOf({ ...means, trial: addedAbsorption(ratios, means.white) })),
      white: sides.white.each.map((white) =>
        logOf({
          ...means,
          white,
          reference: addedAbsorption(sides.reference.mean, white),
          trial: addedAbsorption(sides.trial.mean, white),
        }),
      ),
    };
  } catch (error) {
    if (!(error instanceof TintladderError)) throw error;
    const message = `There is no interval, since one of the replicates alone has no strength: ${error.message}`;
    return { warnings: [{ code: 'no-interval', message, path: error.path }] };
  }
  const warnings: Warning[] = [];
  const interval = intervalFromReplicates(percent, logs);
  for (const name of ['reference', 'trial', 'white'] as const) {
    if (logs[name].length > 1 && Math.max(...logs[name]) - Math.min(...logs[name]) < IDENTICAL) {
      const message = `All readings of the ${name} are the same: a duplicate of a reading is no replicate and shows no scatter.`;
      warnings.push({ code: 'replicates-identical', message, path: name });
    }
  }
  if (interval && single) {
    const [once, repeated] = counts[0] === 1 ? ['reference', 'trial'] : ['trial', 'reference'];
    const message = `The ${once} was read once; its scatter is taken to be that of the ${repeated}.`;
    warnings.push({ code: 'scatter-borrowed', message, path: once });
  }
  return { ...(interval && { interval }), warnings };
}

/** Logarithms closer than this differ by rounding. */
const IDENTICAL = 1e-12;
