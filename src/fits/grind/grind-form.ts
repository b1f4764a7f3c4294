import type { Repeated } from '../../evidence/index.js';
import type { LadderStep } from '../ladder/ladder-steps.js';

/** Strength after a time of dispersing, in the units of the caller. */
export interface GrindPoint {
  /** Time in the mill, any unit, >= 0; each once */
  readonly time: number;
  /** Strength after it, any unit, >= 0, mostly % of a reference: one figure, or repeated ones as `{ weighing: [a, b] }` */
  readonly strength: Repeated<number>;
}

/** A place on a grind curve. */
export interface GrindCurvePoint {
  readonly time: number;
  readonly strength: number;
}

/** The two shapes of a grind curve. */
export const GRIND_FORMS = ['half-time', 'exponential'] as const;

/** One of {@link GRIND_FORMS}. */
export type GrindFormName = (typeof GRIND_FORMS)[number];

/**
 * One shape of the grind curve, fitted to points by least squares. Everything that is asked of it - final strength, times to a share
 * or a level of strength - has its own profile: the least sum of squares of all curves with that figure held.
 */
export interface FittedForm {
  readonly name: GrindFormName;
  /** Number of parameters of the curve. */
  readonly parameters: number;
  readonly squares: number;
  readonly finalStrength: number;
  strengthAt(time: number): number;
  /** Time to a share of the final strength; 0 or less if the curve starts above it. */
  timeToShare(share: number): number;
  /** Time to a strength below the final one; 0 or less if the curve starts above it. */
  timeToStrength(strength: number): number;
  profileOfFinalStrength(finalStrength: number): number;
  profileOfTimeToShare(share: number, time: number): number;
  profileOfTimeToStrength(strength: number, time: number): number;
}

/** How points scatter around a curve: in proportion to the strength, by the same amount everywhere, or somehow between. */
export const GRIND_SCATTERS = ['proportional', 'constant', 'unknown'] as const;

/** One of {@link GRIND_SCATTERS}. */
export type GrindScatter = (typeof GRIND_SCATTERS)[number];

/** The power of the strength that the variance of a point is taken to grow with. */
const VARIANCE_POWER: Readonly<Record<GrindScatter, number>> = { constant: 0, unknown: 0.7, proportional: 2 };

/** A point with the weight of its square in the sum. */
export interface WeightedPoint extends GrindCurvePoint {
  readonly weight: number;
}

/** The weighted sum of squares of what `curve` leaves of the points. */
export function squaresOf(points: readonly WeightedPoint[], curve: (time: number) => number): number {
  let sum = 0;
  for (const { time, strength, weight } of points) {
    const rest = strength - curve(time);
    sum += weight * rest * rest;
  }
  return sum;
}

/** How far below the first and above the last time a time constant is looked for. */
const BELOW = 300;
const ABOVE = 300;

/** The range of the logarithm of a time constant that points in time can tell anything about. */
export function timeConstantRange(points: readonly GrindCurvePoint[]): { readonly low: number; readonly high: number } {
  const times = points.map(({ time }) => time).filter((time) => time > 0);
  return { low: Math.log(Math.min(...times) / BELOW), high: Math.log(Math.max(...times) * ABOVE) };
}

/** Strengths below this share of the highest one are not trusted to scatter any less than it says. */
const LEAST_SHARE = 0.1;

/**
 * The weight of each step for its scatter, the same for all its units. The highest strength weighs 1, so that the residual deviation is the
 * one to expect there.
 */
export function stepWeights(steps: readonly LadderStep[], scatter: GrindScatter): number[] {
  const highest = Math.max(...steps.map(({ mean }) => mean));
  return steps.map(({ mean }) => (highest > 0 ? Math.max(mean / highest, LEAST_SHARE) ** -VARIANCE_POWER[scatter] : 1));
}

/** Every unit of every step as a point with the weight of its step. */
export function weightedPoints(steps: readonly LadderStep[], weights: readonly number[]): WeightedPoint[] {
  return steps.flatMap(({ at, units }, i) => units.map((strength) => ({ time: at, strength, weight: weights[i] })));
}
