import { TintladderError, type Warning } from '../core/index.js';
import { fitForms, timeBounds } from './fit-grind-curve.js';
import type { FittedQuantity } from './fitted-quantity.js';
import type { GrindCurveFit } from './grind-curve-fit.js';
import { weigh } from './grind-form.js';

/** Options of {@link grindingTimeSaved}. */
export interface TimeSavedOptions {
  /**
   * The strength to which both are ground, in the unit of the fits.
   *
   * @default 90 % of the final strength of the reference
   */
  readonly strength?: number;
}

/** Time that the sample saves against the reference, to the same strength. */
export interface GrindingTimeSaved {
  /** Time of the reference minus time of the sample; positive is time saved */
  readonly saved: FittedQuantity;
  readonly strength: number;
  readonly referenceTime: number;
  readonly sampleTime: number;
  readonly warnings: readonly Warning[];
}

/**
 * Grinding time saved: the difference of the times at which two grind curves reach the same strength.
 *
 * Each curve keeps its preferred form; where the forms are undecided its time spans both. The interval puts the profile intervals of both times together by their distances from the
 * estimates (square-and-add, for independent ladders).
 *
 * @param reference - grind curve without the aid
 * @param sample - grind curve with it, in the same units
 * @param options - strength: the one to which both are ground
 * @returns time saved with its interval, both times, and warnings
 * @throws TintladderError `no-solution` if a curve does not reach the strength or starts above it; `out-of-range` for a strength that
 * is not positive
 * @example
 * const ladder = (half) => [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + half) }));
 * grindingTimeSaved(fitGrindCurve(ladder(10)), fitGrindCurve(ladder(6)), { strength: 90 }).saved.value // 12.00
 * @see Zou & Donner (2008), Statistics in Medicine 27, for the interval of a difference from two intervals
 */
export function grindingTimeSaved(
  reference: GrindCurveFit,
  sample: GrindCurveFit,
  { strength = 0.9 * reference.finalStrength.value }: TimeSavedOptions = {},
): GrindingTimeSaved {
  if (!(strength > 0 && strength < Infinity)) {
    throw new TintladderError('out-of-range', {
      path: 'options.strength',
      received: strength,
      expected: 'a strength above 0',
    });
  }
  const warnings: Warning[] = [];
  const [slow, fast] = [timeTo(reference, strength, 'reference'), timeTo(sample, strength, 'sample')];
  for (const { path, time, last } of [slow, fast]) {
    if (time <= last) continue;
    const message = `The ${path} reaches ${strength} only beyond the last time read, ${last}, on its extrapolated curve.`;
    warnings.push({ code: 'extrapolated', path, message });
  }
  const value = slow.time - fast.time;
  const extrapolated = warnings.length > 0;
  const interval = differenceInterval(slow, fast);
  if (!interval) {
    const message = 'The data leave one of the two times open, so that the time saved has no 95 % interval.';
    warnings.push({ code: 'interval-open', path: 'saved', message });
  }
  return {
    saved: interval ? { value, interval, extrapolated } : { value, extrapolated },
    strength,
    referenceTime: slow.time,
    sampleTime: fast.time,
    warnings,
  };
}

function timeTo(curve: GrindCurveFit, strength: number, path: 'reference' | 'sample'): TimeEstimate {
  const points = weigh(curve.points, curve.scatter);
  const estimates = fitForms(points)
    .filter(({ name }) => curve.formsUndecided || name === curve.form)
    .map((fit) => {
      const time = strength < fit.finalStrength ? fit.timeToStrength(strength) : Infinity;
      if (!(time > 0 && time < Infinity)) return { name: fit.name, time };
      return {
        name: fit.name,
        time,
        ...timeBounds((held) => fit.profileOfTimeToStrength(strength, held), time, fit, points),
      };
    });
  const time = estimates.find(({ name }) => name === curve.form)?.time ?? Infinity;
  if (!(time > 0 && time < Infinity)) {
    throw new TintladderError('no-solution', {
      path: `strength on the ${path}`,
      received: strength,
      expected: `a strength between the start of its curve and its final strength, ${curve.finalStrength.value}`,
    });
  }
  // An end that one form leaves open stays open.
  const end = (bound: 'low' | 'high', choose: (...ends: number[]) => number) => {
    const ends = estimates.flatMap((estimate) => ('low' in estimate ? (estimate[bound] ?? []) : []));
    return ends.length === estimates.length ? choose(...ends) : undefined;
  };
  return { path, time, last: points[points.length - 1].time, low: end('low', Math.min), high: end('high', Math.max) };
}

interface TimeEstimate {
  readonly path: string;
  readonly last: number;
  readonly time: number;
  readonly low?: number;
  readonly high?: number;
}

function differenceInterval(a: TimeEstimate, b: TimeEstimate): FittedQuantity['interval'] {
  if (a.low === undefined || a.high === undefined || b.low === undefined || b.high === undefined) return undefined;
  const value = a.time - b.time;
  return {
    low: value - Math.hypot(a.time - a.low, b.high - b.time),
    high: value + Math.hypot(a.high - a.time, b.time - b.low),
  };
}
