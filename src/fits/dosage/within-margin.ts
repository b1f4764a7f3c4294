import { studentQuantile } from '../../numeric/internal.js';
import type { LadderStep } from '../ladder/ladder-steps.js';
import type { StepScatter } from './step-scatter.js';

/** Chance that the dosage named falls short of the best by more than the margin. */
const RISK = 0.05;

/**
 * The smallest dosage shown to lie within a margin of the best, whichever that is; undefined where none is shown to.
 *
 * A dosage is shown to if against each other one the whole one-sided interval of the difference lies inside the margin; all must agree, which
 * needs no correction. From the highest mean on downwards every dosage must be shown to: in such a fixed order the first that is not ends the
 * search, and the risk needs not be shared among the dosages.
 *
 * @param steps - in the order of the dosage, with units on a scale on which a margin is a difference and more is better
 * @see Hsu (1996), Multiple Comparisons, chapter 4, for comparisons with the best; Berger (1982), Technometrics 24, for claims that all must
 * meet; Maurer, Hothorn & Lehmacher (1995), in Biometrie in der chemisch-pharmazeutischen Industrie 6, for tests in a fixed order
 */
export function smallestWithinMargin(
  steps: readonly LadderStep[],
  margin: number,
  { standardDeviation, degreesOfFreedom }: StepScatter,
): LadderStep | undefined {
  const quantile = studentQuantile(1 - RISK, degreesOfFreedom);
  const shown = (step: LadderStep) =>
    steps.every((other) => {
      if (other === step) return true;
      const error = standardDeviation * Math.sqrt(1 / step.units.length + 1 / other.units.length);
      return step.mean - other.mean + margin >= quantile * error;
    });
  const highest = steps.reduce((best, step) => (step.mean > best.mean ? step : best));
  let found: LadderStep | undefined;
  for (let i = steps.indexOf(highest); i >= 0 && shown(steps[i]); i--) found = steps[i];
  return found;
}
