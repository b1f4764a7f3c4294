import { TintladderError, type Warning } from '../core/index.js';
import { fitExponentialForm } from './exponential-form.js';
import { type FittedQuantity, fittedQuantity } from './fitted-quantity.js';
import type { GrindCurveFit, GrindFormFit } from './grind-curve-fit.js';
import type { FittedForm, GrindFormName, GrindPoint, GrindScatter, WeightedPoint } from './grind-form.js';
import { GRIND_FORMS, GRIND_SCATTERS, weigh } from './grind-form.js';
import { fitHalfTimeForm } from './half-time-form.js';
import { assertEnough, assertPoints, findReplicates, replicateWarnings } from './ladder-points.js';
import { type Bounds, profileBounds, profileLimit } from './profile-interval.js';
import { spanForms } from './span-forms.js';

/** Options of {@link fitGrindCurve}. */
export interface GrindCurveOptions {
  /** Fit only this form; by default both are fitted and AICc chooses. */
  readonly form?: GrindFormName;
  /**
   * How the points scatter around the curve: by the same amount everywhere (`constant`) or in proportion to the strength. If `unknown`, the
   * variance is taken to grow with the strength to the power of 0.7: whichever of the two is true, the intervals then hold.
   *
   * @default 'unknown'
   */
  readonly scatter?: GrindScatter;
}

const LEAST = { steps: 4, points: 4 };
/** The exponential form has three parameters and needs a step more. */
const LEAST_STEPS_EXPONENTIAL = 5;
const SAMPLES = 100;

/**
 * Fits the development of strength over dispersing time, in two forms: `F(t) = F∞ t / (t + t½)` and
 * `F(t) = F∞ - (F∞ - F0) exp(-t / τ)`.
 *
 * Weighted least squares. Intervals are 95 % profile-likelihood intervals with Student's t; those of a form hold if
 * the form is the right one. AICc prefers a form; below six points it is the half-time form, which has fewer parameters. Where the
 * other form leaves less than twice the sum of squares, the points don't tell the two apart: the intervals then span both forms
 * and `formsUndecided` is true. Points at the same time are replicates.
 * Nothing is extrapolated silently: a time outside the ladder is marked `extrapolated` and noted, and the curve for plotting ends with
 * the points.
 *
 * @param points - time and strength in any units, in the order of time; at least four different times, five for the exponential form
 * @param options - form: fit only this one
 * @returns final strength, half-time, times to 90 % and 95 % of the final strength, with intervals; residual deviation; the
 * curve; both forms; warnings `extrapolated`, `interval-open`, `replicates`, `lack-of-fit`, `form-not-compared`, `forms-undecided`,
 * `reached-at-start`
 * @throws TintladderError `too-few-points`; `not-increasing` for a time below the one before it; `ill-conditioned` if the strength
 * does not rise or rises without levelling off, so that no final strength or no half-time can be found; `not-finite`; `out-of-range`
 * for a negative time or strength; `invalid-option`
 * @example
 * const points = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
 * fitGrindCurve(points).finalStrength.value // 120.0
 * @example
 * const points = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
 * fitGrindCurve(points).timeTo90.value // 90.0
 * @see Seber & Wild, Nonlinear Regression; Bates & Watts (1988), 6.1.2, for the intervals; Hurvich & Tsai (1989), Biometrika 76, for AICc
 */
export function fitGrindCurve(
  points: readonly GrindPoint[],
  { form, scatter = 'unknown' }: GrindCurveOptions = {},
): GrindCurveFit {
  assertPoints(points);
  if (form !== undefined) assertOneOf(GRIND_FORMS, form, 'options.form');
  assertOneOf(GRIND_SCATTERS, scatter, 'options.scatter');
  const times = points.map(({ time }) => time);
  assertIncreasing(times);
  assertEnough(times, 'time', form === 'exponential' ? { steps: LEAST_STEPS_EXPONENTIAL, points: 5 } : LEAST);

  const weighted = weigh(points, scatter);
  const fitted = fitForms(weighted, form).map((fit) => describe(fit, weighted));
  const [best, other] = [...fitted].sort((a, b) => (a.aicc ?? 0) - (b.aicc ?? 0));
  if (!best) {
    throw new TintladderError('ill-conditioned', {
      path: 'points',
      received: points.map(({ strength }) => strength),
      expected: 'a strength that rises and begins to level off within the times read',
      hint: 'Read earlier times if it rises no more, later times if it still rises evenly.',
    });
  }
  const compared = best.aicc !== undefined && other?.aicc !== undefined;
  const shared = { scatter, forms: fitted, points: points.map(({ time, strength }) => ({ time, strength })) };
  if (!other) {
    const why = 'The other form of the curve could not be fitted.';
    const warnings = form ? best.warnings : [...best.warnings, { code: 'form-not-compared' as const, message: why }];
    return { ...best, ...shared, warnings, chosenBy: form ? 'caller' : 'only-form', formsUndecided: false };
  }
  const [preferred, rival] = compared || best.form === 'half-time' ? [best, other] : [other, best];
  return { ...spanForms(preferred, rival), ...shared, chosenBy: compared ? 'aicc' : 'fewer-parameters' };
}

/** The forms that the points can carry. */
export function fitForms(points: readonly WeightedPoint[], form?: GrindFormName): FittedForm[] {
  const steps = new Set(points.map(({ time }) => time)).size;
  const found: (FittedForm | undefined)[] = [];
  if (form !== 'exponential') found.push(fitHalfTimeForm(points));
  if (form !== 'half-time' && steps >= LEAST_STEPS_EXPONENTIAL) found.push(fitExponentialForm(points));
  return found.flatMap((fit) => fit ?? []);
}

/** Interval of a time, which can't be below 0. */
export function timeBounds(
  profile: (time: number) => number,
  value: number,
  fit: FittedForm,
  points: readonly WeightedPoint[],
): Bounds {
  const last = points[points.length - 1].time;
  const range = { low: Math.min(value, 1e-6 * last), high: 1000 * last };
  const { low = 0, high } = profileBounds(
    profile,
    value,
    limitOf(fit, points),
    range,
    0.02 * Math.max(value, 0.01 * last),
  );
  return { low: Math.max(0, low), high: high === undefined ? undefined : Math.max(0, high) };
}

/** The profile limit; a fit that leaves nothing but rounding has intervals without width. */
export function limitOf(fit: FittedForm, points: readonly WeightedPoint[]): number {
  const scale = squaresOfStrength(points) * Number.EPSILON;
  return fit.squares < scale * 1e-10 ? 0 : profileLimit(fit.squares, points.length - fit.parameters);
}

function squaresOfStrength(points: readonly WeightedPoint[]): number {
  return points.reduce((sum, { strength, weight }) => sum + weight * strength * strength, 0);
}

function describe(fit: FittedForm, points: readonly WeightedPoint[]): GrindFormFit {
  const [first, last] = [points[0].time, points[points.length - 1].time];
  const degreesOfFreedom = points.length - fit.parameters;
  const warnings: Warning[] = [];
  const noted = (made: ReturnType<typeof fittedQuantity>): FittedQuantity => {
    warnings.push(...made.warnings);
    return made.quantity;
  };
  const timeToShare = (share: number, name: string) => {
    const value = fit.timeToShare(share);
    const bounds = timeBounds((time) => fit.profileOfTimeToShare(share, time), value, fit, points);
    if (!(value < 0)) return noted(fittedQuantity(name, value, bounds, { first, last, axis: 'time' }));
    const message = `The fitted curve starts above ${100 * share} % of the final strength, so that the ${name} is 0.`;
    warnings.push({ code: 'reached-at-start', path: name, message });
    return noted(fittedQuantity(name, 0, bounds, { first: 0, last, axis: 'time' }));
  };
  const { finalStrength } = fit;
  const finalBounds = profileBounds(
    fit.profileOfFinalStrength,
    finalStrength,
    limitOf(fit, points),
    { low: 0, high: 10 * finalStrength },
    0.005 * finalStrength,
  );
  const replicates = findReplicates(
    points.map(({ time }) => time),
    points.map(({ strength }) => strength),
  );
  const result = {
    form: fit.name,
    finalStrength: noted(fittedQuantity('final strength', finalStrength, finalBounds)),
    halfTime: timeToShare(0.5, 'half-time'),
    timeTo90: timeToShare(0.9, 'time to 90 %'),
    timeTo95: timeToShare(0.95, 'time to 95 %'),
    residualDeviation: Math.sqrt(fit.squares / degreesOfFreedom),
    degreesOfFreedom,
    aicc: aicc(fit, points),
    curve: Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const time = first + ((last - first) * i) / SAMPLES;
      return { time, strength: fit.strengthAt(time) };
    }),
  };
  warnings.push(...replicateWarnings(replicates, 'time', { squares: fit.squares, degreesOfFreedom }));
  return { ...result, warnings };
}

/** The variance counts as a parameter. A perfect fit is taken as one within rounding, so that its logarithm stays finite. */
function aicc(fit: FittedForm, points: readonly WeightedPoint[]): number | undefined {
  const n = points.length;
  const k = fit.parameters + 1;
  if (n - k - 1 < 1) return undefined;
  const squares = Math.max(fit.squares, squaresOfStrength(points) * Number.EPSILON ** 2);
  return n * Math.log(squares / n) + 2 * k + (2 * k * (k + 1)) / (n - k - 1);
}

function assertIncreasing(times: readonly number[]): void {
  times.forEach((time, i) => {
    if (i === 0 || time >= times[i - 1]) return;
    throw new TintladderError('not-increasing', {
      path: `points[${i}].time`,
      received: time,
      expected: `a time not before that of the point before it, ${times[i - 1]}`,
      hint: 'Give the points in the order of time; points at the same time are replicates.',
    });
  });
}

function assertOneOf(list: readonly string[], received: string, path: string): void {
  if (list.includes(received)) return;
  throw new TintladderError('invalid-option', { path, received, expected: `one of ${list.join(', ')}` });
}
