import type { Warning } from '../../core/index.js';
import { fisherQuantile, squaresAroundMean } from '../../numeric/internal.js';
import type { LadderStep } from './ladder-steps.js';

/** Scatter of the units of a step around its mean, over all steps: what no curve can explain. */
export interface UnitScatter {
  readonly squares: number;
  readonly degreesOfFreedom: number;
}

/** Pools the scatter between units; `weights` are those of the steps' squares in the fit. */
export function unitScatter(steps: readonly LadderStep[], weights: readonly number[]): UnitScatter {
  let [squares, degreesOfFreedom] = [0, 0];
  steps.forEach(({ units }, i) => {
    squares += weights[i] * squaresAroundMean(units);
    degreesOfFreedom += units.length - 1;
  });
  return { squares, degreesOfFreedom };
}

/**
 * Says where the curve misses the means of the steps by more than units that were made anew scatter (F test for lack of fit at 5 %). Spots
 * of one film are no such units: they agree with one another far better than with any curve.
 *
 * @see Draper & Smith, Applied Regression Analysis, chapter on lack of fit and pure error
 */
export function lackOfFit(
  { squares, degreesOfFreedom }: UnitScatter,
  fit: { readonly squares: number; readonly degreesOfFreedom: number },
): Warning[] {
  const freedom = fit.degreesOfFreedom - degreesOfFreedom;
  if (!(freedom > 0 && degreesOfFreedom > 0 && squares > 0)) return [];
  const ratio = (fit.squares - squares) / freedom / (squares / degreesOfFreedom);
  if (!(ratio > fisherQuantile(0.95, freedom, degreesOfFreedom))) return [];
  const message =
    'The curve misses the means by more than what was made anew scatters; another shape lies behind the data.';
  return [{ code: 'lack-of-fit', message, figures: { ratio } }];
}
