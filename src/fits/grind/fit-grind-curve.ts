import { TintladderError, type Warning } from '../../core/index.js';
import { assertOneOf, assertOptions, assertPositive } from '../../core/internal.js';
import { assertEnough, type LadderStep, pointsOf, readLadder } from '../ladder/ladder-steps.js';
import { type ChosenForm, endFigures } from './choose-form.js';
import { LEAST_STEPS_EXPONENTIAL } from './describe-form.js';
import { fitSteps, risingSteps } from './fit-steps.js';
import type { GrindCurveFit } from './grind-curve-fit.js';
import { GRIND_FORMS, GRIND_SCATTERS, type GrindFormName, type GrindPoint, type GrindScatter } from './grind-form.js';
import type { GrindStep } from './grind-step.js';
import { strengthWithin, type TimeToStrength, timeToStrength } from './time-to-strength.js';

/** Options of {@link fitGrindCurve}. */
export interface GrindCurveOptions {
  /**
   * The strength whose time is asked for, in the unit of the points.
   *
   * @default 95 % of the highest strength read
   */
  readonly strength?: number | undefined;
  /** Fit only this form; by default both are fitted and AICc chooses. */
  readonly form?: GrindFormName | undefined;
  /**
   * How the points scatter around the curve: by the same amount everywhere (`constant`) or in proportion to the strength. If `unknown`, the
   * variance is taken to grow with the strength to the power of 0.7: whichever of the two is true, the intervals then hold.
   *
   * @default 'unknown'
   */
  readonly scatter?: GrindScatter | undefined;
}

const OPTIONS = ['strength', 'form', 'scatter'];
const LEAST = { steps: 4, units: 4 };

/**
 * Fits the development of strength over dispersing time.
 *
 * The figure to compare is the time to a stated strength inside the ladder, `timeToStrength`: read from a rising curve through the points,
 * without a law for its shape. Beside it two forms are fitted by weighted least squares, `F(t) = F∞ t / (t + t½)` and
 * `F(t) = F∞ - (F∞ - F0) exp(-t / τ)`; AICc prefers one, below six points it is the half-time form. Final strength, half-time and the times
 * to 90 and 95 % of the final strength hang on an end that was never read: they have no interval but `atLeast`; the intervals in `forms`
 * (95 %, profile likelihood) hold if the grind follows that form.
 *
 * A point is what was made anew: weigh-ups of one time each count, spots and drawdowns of one weigh-up are averaged. Lack of fit is tested
 * against the scatter between weigh-ups only. Steps at the end that fall off by more than the points scatter are noted and left out.
 *
 * @param points - time and strength in any units, each time once, in its order; at least four times, five for the exponential form
 * @param options - strength whose time is asked for; form; scatter
 * @returns time to the stated strength with its interval; final strength, half-time, times to 90 % and 95 % of the final strength; both forms;
 * the curve; warnings `extrapolated`, `reached-at-start`, `lack-of-fit`, `form-not-compared`, `forms-undecided`, `falls-off`, `interval-open`
 * @throws TintladderError `too-few-points`; `not-increasing` for a time below the one before it; `repetition-unstated` for a time that stands
 * there twice; `ill-conditioned` if the strength does not rise or rises without levelling off; `no-solution` for a stated strength outside the
 * ladder; `not-finite`; `out-of-range` for a negative time or strength; `invalid-option`; `wrong-type`
 * @example
 * const points = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
 * fitGrindCurve(points, { strength: 80 }).timeToStrength.value // 20.00
 * @example
 * const points = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
 * fitGrindCurve(points).finalStrength.value // 120.0
 * @see Seber & Wild, Nonlinear Regression; Bates & Watts (1988), 6.1.2, for the profiles; Hurvich & Tsai (1989), Biometrika 76, for AICc
 */
export function fitGrindCurve(points: readonly GrindPoint[], options: GrindCurveOptions = {}): GrindCurveFit {
  assertOptions(options, OPTIONS);
  const { form, scatter = 'unknown', strength } = options;
  if (form !== undefined) assertOneOf(form, GRIND_FORMS, 'options.form');
  assertOneOf(scatter, GRIND_SCATTERS, 'options.scatter');
  if (strength !== undefined) assertPositive({ strength });
  const steps = readLadder(
    pointsOf(points).map(({ time, strength }) => ({ at: time, given: strength })),
    { axis: 'time', value: 'strength' },
  );
  assertIncreasing(steps);
  const least = form === 'exponential' ? { steps: LEAST_STEPS_EXPONENTIAL, units: LEAST_STEPS_EXPONENTIAL } : LEAST;
  assertEnough(steps, 'time', least);

  const rules = { scatter, form, least: least.steps };
  const { rising, warnings: falls } = risingSteps(steps, rules);
  const { chosen, fits, forms, points: risen, degreesOfFreedom, warnings: lack } = fitSteps(rising, rules);
  if (!chosen) throw notLevelling(steps);
  const { preferred, rival, chosenBy } = chosen;
  const preferredFit = fits.find(({ name }) => name === preferred.form);
  const asked = strength ?? strengthWithin([risen]);
  const time = timeToStrength(asked, {
    points: risen,
    degreesOfFreedom,
    formTime: (level) =>
      preferredFit && level < preferredFit.finalStrength ? preferredFit.timeToStrength(level) : undefined,
  });
  if (strength !== undefined && !time) throw outsideLadder(strength, risen);
  return {
    kind: 'grind-curve',
    version: 1,
    ...(time && { timeToStrength: time }),
    ...preferred,
    ...endFigures(chosen),
    chosenBy,
    formsUndecided: rival !== undefined,
    forms,
    scatter,
    points: steps.length === rising.length ? risen : [...risen, ...fitSteps(steps, rules).points.slice(rising.length)],
    pointDegreesOfFreedom: degreesOfFreedom,
    ...(rising.length < steps.length && { risesUntil: rising[rising.length - 1].at }),
    warnings: [
      ...preferred.warnings.filter(({ code }) => code !== 'interval-open'),
      ...noteForms(chosen, form !== undefined),
      ...lack,
      ...falls,
      ...noteOpen(time),
    ],
  };
}

function noteForms({ rival, chosenBy }: ChosenForm, asked: boolean): Warning[] {
  if (chosenBy === 'only-form' && !asked) {
    return [{ code: 'form-not-compared', message: 'The other form of the curve could not be fitted.' }];
  }
  if (!rival) return [];
  const message =
    'The points fit both forms of the curve about as well; what hangs on its end is that of the preferred one, at least as much as both say.';
  return [{ code: 'forms-undecided', message }];
}

function noteOpen(time: TimeToStrength | undefined): Warning[] {
  if (!time || time.interval) return [];
  const { strength, atLeast = 0 } = time;
  const message = `The ladder ends before the strength of ${Number(strength.toPrecision(4))} is surely reached; its time has no upper end.`;
  return [{ code: 'interval-open', path: 'time to strength', message, figures: { strength, low: atLeast } }];
}

function assertIncreasing(steps: readonly LadderStep[]): void {
  steps.forEach(({ at }, i) => {
    if (i === 0 || at > steps[i - 1].at) return;
    throw new TintladderError('not-increasing', {
      path: `points[${i}].time`,
      received: at,
      expected: `a time after that of the point before it, ${steps[i - 1].at}`,
      hint: 'Give the points in the order of time.',
    });
  });
}

function notLevelling(steps: readonly LadderStep[]): TintladderError {
  return new TintladderError('ill-conditioned', {
    path: 'points',
    received: steps.map(({ mean }) => mean),
    expected: 'a strength that rises and begins to level off within the times read',
    hint: 'Read earlier times if it rises no more, later times if it still rises at the same rate.',
  });
}

/** The fault of a strength that a ladder doesn't reach or starts above. */
function outsideLadder(strength: number, points: readonly GrindStep[]): TintladderError {
  return new TintladderError('no-solution', {
    path: 'options.strength',
    received: strength,
    expected: `a strength that the ladder passes, which goes from ${points[0].strength} to ${points[points.length - 1].strength}`,
    hint: 'The time to a strength is never extrapolated.',
  });
}
