import type { Interval } from '../../decision/index.js';
import { studentQuantile } from '../../numeric/internal.js';
import type { FittedQuantity } from '../ladder/fitted-quantity.js';
import { crossing, monotoneCurve } from '../ladder/monotone-curve.js';
import type { GrindStep } from './grind-step.js';

/** Time to a stated strength inside the ladder. */
export interface TimeToStrength extends FittedQuantity {
  readonly strength: number;
}

/** What the time is read from. */
export interface ReadCurve {
  readonly points: readonly GrindStep[];
  /** Of the standard errors of the points. */
  readonly degreesOfFreedom: number;
  /** Time at which the preferred form reaches a strength; it widens the interval where it lies outside. */
  readonly formTime?: (strength: number) => number | undefined;
}

/**
 * The time at which a rising curve through the points reaches a strength: inside the ladder, without a law for its shape.
 *
 * The interval holds the times at which the strength lies within t times the standard error of the curve, and the time by the preferred form.
 *
 * @returns undefined for a strength that the ladder doesn't reach or starts above
 * @see Draper & Smith, Applied Regression Analysis, chapter on inverse estimation
 */
export function timeToStrength(
  strength: number,
  { points, degreesOfFreedom, formTime }: ReadCurve,
): TimeToStrength | undefined {
  const curve = monotoneCurve(
    points.map(({ time, strength: value, standardError }) => ({ at: time, value, error: standardError })),
  );
  const value = crossing(curve, (time) => curve.valueAt(time) - strength, 'start');
  if (value === undefined || curve.valueAt(curve.first) > strength) return undefined;
  const quantile = studentQuantile(0.975, degreesOfFreedom);
  const edge = (sign: 1 | -1) => (time: number) =>
    curve.valueAt(time) + sign * quantile * curve.errorAt(time) - strength;
  const byForm = formTime?.(strength) ?? value;
  const first = crossing(curve, edge(1), 'start') ?? value;
  const low = Math.min(first > curve.first ? first : 0, byForm, value);
  const high = crossing(curve, edge(-1), 'end');
  const interval: Interval | undefined =
    high === undefined ? undefined : { low, high: Math.max(high, byForm <= curve.last ? byForm : high, value) };
  return { strength, value, ...(interval ? { interval } : { atLeast: low }), extrapolated: false };
}

/** Share of the strength at the last time that a curve is asked for where no strength is stated. */
const SHARE = 0.95;

/** The strength asked for where none is stated: 95 % of the highest that all curves reach. */
export function strengthWithin(curves: readonly (readonly GrindStep[])[]): number {
  const highest = curves.map((points) => Math.max(...points.map(({ strength }) => strength)));
  return SHARE * Math.min(...highest);
}
