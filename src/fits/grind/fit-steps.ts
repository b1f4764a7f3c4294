import type { Warning } from '../../core/index.js';
import { fallingOff } from '../ladder/falling-off.js';
import type { LadderStep } from '../ladder/ladder-steps.js';
import { lackOfFit, type UnitScatter, unitScatter } from '../ladder/unit-scatter.js';
import { type ChosenForm, chooseForm } from './choose-form.js';
import { describeForm, fitForms } from './describe-form.js';
import type { GrindFormFit } from './grind-curve-fit.js';
import { type FittedForm, type GrindFormName, type GrindScatter, stepWeights, weightedPoints } from './grind-form.js';
import type { GrindStep } from './grind-step.js';

/** Fewer degrees of freedom between units say less of the scatter than the points around the curve. */
const ENOUGH = 3;
/** So many steps at the end may have fallen off; the scatter is then taken from those before them. */
const MAY_FALL = 3;

/** What is done with the steps of a grind curve. */
export interface StepRules {
  readonly scatter: GrindScatter;
  readonly form: GrindFormName | undefined;
  /** Fewest steps that the forms need. */
  readonly least: number;
}

/** The steps with both forms fitted to them. */
export interface FittedSteps {
  readonly points: readonly GrindStep[];
  /** Of the standard errors of the points. */
  readonly degreesOfFreedom: number;
  readonly fits: readonly FittedForm[];
  readonly forms: readonly GrindFormFit[];
  /** Absent where no form could be fitted. */
  readonly chosen?: ChosenForm;
  /** `lack-of-fit` where the form misses the means by more than units scatter. */
  readonly warnings: readonly Warning[];
}

/** Fits both forms and takes the scatter from units that were made anew, or where there are too few from the points around the curve. */
export function fitSteps(steps: readonly LadderStep[], { scatter, form }: StepRules): FittedSteps {
  const weights = stepWeights(steps, scatter);
  const weighted = weightedPoints(steps, weights);
  const fits = fitForms(weighted, form);
  const forms = fits.map((fit) => describeForm(fit, weighted));
  const chosen = chooseForm(forms, form !== undefined);
  const between = unitScatter(steps, weights);
  const around = chosen && {
    squares: chosen.preferred.residualDeviation ** 2 * chosen.preferred.degreesOfFreedom,
    degreesOfFreedom: chosen.preferred.degreesOfFreedom,
  };
  const { deviation, degreesOfFreedom } = deviationOf(between, around);
  const points = steps.map(({ at, units, mean, noun }, i) => {
    return { time: at, strength: mean, standardError: deviation / Math.sqrt(weights[i] * units.length), noun };
  });
  const shared = { points, degreesOfFreedom: Math.max(degreesOfFreedom, 1), fits, forms };
  return { ...shared, ...(chosen && { chosen }), warnings: around ? lackOfFit(between, around) : [] };
}

/** The steps up to where the strength falls off, with the note that says so; all of them where it doesn't. */
export function risingSteps(
  steps: readonly LadderStep[],
  rules: StepRules,
): { readonly rising: readonly LadderStep[]; readonly warnings: readonly Warning[] } {
  const errors = standardErrors(steps, rules);
  const points = steps.map(({ at, mean }, i) => ({ at, value: mean, error: errors.of[i] }));
  const warnings = fallingOff(points, errors.degreesOfFreedom, 'Was it ground too long?');
  const from = warnings[0]?.figures?.from;
  const rising = from === undefined ? steps : steps.filter(({ at }) => at < Number(from));
  return { rising: rising.length >= rules.least ? rising : steps, warnings };
}

/** Standard errors of the steps by units that were made anew, or by the curve through those before the end. */
function standardErrors(steps: readonly LadderStep[], { scatter, form, least }: StepRules) {
  const weights = stepWeights(steps, scatter);
  const between = unitScatter(steps, weights);
  const head = steps.slice(0, -MAY_FALL);
  const points = weightedPoints(head.length >= least ? head : steps, weights);
  // The form that leaves less is enough to tell how points scatter around a curve.
  const around =
    between.degreesOfFreedom >= ENOUGH
      ? []
      : fitForms(points, form).map(({ squares, parameters }) => ({
          squares,
          degreesOfFreedom: points.length - parameters,
        }));
  const [clearest] = around.sort((a, b) => a.squares / a.degreesOfFreedom - b.squares / b.degreesOfFreedom);
  const { deviation, degreesOfFreedom } = deviationOf(between, clearest);
  const of = steps.map(({ units }, i) => deviation / Math.sqrt(weights[i] * units.length));
  return { of, degreesOfFreedom: Math.max(degreesOfFreedom, 1) };
}

function deviationOf(between: UnitScatter, around: UnitScatter | undefined) {
  const { squares, degreesOfFreedom } = between.degreesOfFreedom >= ENOUGH || !around ? between : around;
  return { deviation: degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : 0, degreesOfFreedom };
}
