import type { Warning } from '../../core/index.js';
import { type FittedQuantity, fittedQuantity } from '../ladder/fitted-quantity.js';
import { type Bounds, profileBounds, profileLimit } from '../ladder/profile-interval.js';
import { fitExponentialForm } from './exponential-form.js';
import type { GrindFormFit } from './grind-curve-fit.js';
import type { FittedForm, GrindFormName, WeightedPoint } from './grind-form.js';
import { fitHalfTimeForm } from './half-time-form.js';

/** The exponential form has three parameters and needs a step more. */
export const LEAST_STEPS_EXPONENTIAL = 5;
const SAMPLES = 100;

/** The forms that the points can carry. */
export function fitForms(points: readonly WeightedPoint[], form?: GrindFormName): FittedForm[] {
  const steps = new Set(points.map(({ time }) => time)).size;
  const found: (FittedForm | undefined)[] = [];
  if (form !== 'exponential') found.push(fitHalfTimeForm(points));
  if (form !== 'half-time' && steps >= LEAST_STEPS_EXPONENTIAL) found.push(fitExponentialForm(points));
  return found.flatMap((fit) => fit ?? []);
}

/** A form with its figures and the intervals that hold if it is the right one. */
export function describeForm(fit: FittedForm, points: readonly WeightedPoint[]): GrindFormFit {
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
  const ofForms = aicc(fit, points);
  return {
    form: fit.name,
    finalStrength: { ...noted(fittedQuantity('final strength', finalStrength, finalBounds)), extrapolated: true },
    halfTime: timeToShare(0.5, 'half-time'),
    timeTo90: timeToShare(0.9, 'time to 90 %'),
    timeTo95: timeToShare(0.95, 'time to 95 %'),
    residualDeviation: Math.sqrt(fit.squares / degreesOfFreedom),
    degreesOfFreedom,
    ...(ofForms !== undefined && { aicc: ofForms }),
    curve: Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const time = first + ((last - first) * i) / SAMPLES;
      return { time, strength: fit.strengthAt(time) };
    }),
    warnings,
  };
}

/** Interval of a time, which can't be below 0. */
function timeBounds(
  profile: (time: number) => number,
  value: number,
  fit: FittedForm,
  points: readonly WeightedPoint[],
): Bounds {
  const last = points[points.length - 1].time;
  const range = { low: Math.min(value, 1e-6 * last), high: 1000 * last };
  const step = 0.02 * Math.max(value, 0.01 * last);
  const { low = 0, high } = profileBounds(profile, value, limitOf(fit, points), range, step);
  return { low: Math.max(0, low), ...(high !== undefined && { high: Math.max(0, high) }) };
}

/** The profile limit; a fit that leaves nothing but rounding has intervals without width. */
function limitOf(fit: FittedForm, points: readonly WeightedPoint[]): number {
  const scale = squaresOfStrength(points) * Number.EPSILON;
  return fit.squares < scale * 1e-10 ? 0 : profileLimit(fit.squares, points.length - fit.parameters);
}

function squaresOfStrength(points: readonly WeightedPoint[]): number {
  return points.reduce((sum, { strength, weight }) => sum + weight * strength * strength, 0);
}

function aicc(fit: FittedForm, points: readonly WeightedPoint[]): number | undefined {
  const n = points.length;
  const k = fit.parameters + 1;
  if (n - k - 1 < 1) return undefined;
  const squares = Math.max(fit.squares, squaresOfStrength(points) * Number.EPSILON ** 2);
  return n * Math.log(squares / n) + 2 * k + (2 * k * (k + 1)) / (n - k - 1);
}
