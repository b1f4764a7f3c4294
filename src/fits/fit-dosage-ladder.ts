import type { Warning } from '../core/index.js';
import { fisherQuantile, mean, squaresAroundMean } from '../numeric/internal.js';
import { type FittedQuantity, fittedQuantity } from './fitted-quantity.js';
import { assertEnough, assertPoints, findReplicates, replicateWarnings } from './ladder-points.js';
import { profileBounds, profileLimit, searchMinimum } from './profile-interval.js';
import {
  type DosagePoint,
  plateauFrom,
  profileOfPlateau,
  type QuadraticPlateau,
  responseAt,
} from './quadratic-plateau.js';

/**
 * What a dosage ladder may show. `plateau`: the response levels off within the ladder; `no-plateau-reached`: it still changes at
 * the highest dosage; `no-effect`: the dosages don't differ by more than the points scatter.
 */
export const DOSAGE_OUTCOMES = ['plateau', 'no-plateau-reached', 'no-effect'] as const;

/** One of {@link DOSAGE_OUTCOMES}. */
export type DosageOutcome = (typeof DOSAGE_OUTCOMES)[number];

/** What a dosage ladder shows. */
export interface DosageLadderFit {
  readonly outcome: DosageOutcome;
  /** Dosage at which the plateau starts; only with the outcome `plateau` */
  readonly optimum?: FittedQuantity;
  /** Response on the plateau; only with the outcome `plateau` */
  readonly plateau?: FittedQuantity;
  /** Whether the response rises (strength) or falls (rub-out) towards the plateau; absent without an effect */
  readonly direction?: 'rising' | 'falling';
  /** Standard deviation of the points around the curve, with n - p degrees of freedom */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  /** The fitted curve at 101 dosages from the lowest to the highest one read, for plotting */
  readonly curve: readonly DosagePoint[];
  readonly warnings: readonly Warning[];
}

const LEAST = { steps: 4, points: 5 };
const PARAMETERS = 3;
const SAMPLES = 100;
/** How far beyond the ladder, in lengths of it, the start of the plateau is looked for. */
const BEYOND = 20;
/** Steps of the search over the start within the ladder, and beyond it. */
const STEPS = 200;

/**
 * Fits a ladder of dosages with a quadratic plateau: `y = P - c (x0 - x)²` up to the optimum x0, `y = P` from there on.
 *
 * Least squares with constant scatter; intervals are 95 % profile-likelihood intervals with Student's t. Points may come in any order; points
 * at the same dosage are replicates. Whether the dosage has an effect at all is an F test of the curve against the mean, at 5 %.
 *
 * @param points - dosage and response in any units; at least four different dosages and five points
 * @returns outcome, optimum and plateau with intervals, residual deviation, the curve; warnings `optimum-not-resolved`,
 * `plateau-not-proven`, `interval-open`, `replicates`, `lack-of-fit`, `falls-off`
 * @throws TintladderError `too-few-points`, `not-finite`, `out-of-range` for a negative dosage or response
 * @example
 * const strength = (x) => 108 - 0.5 * Math.max(0, 12 - x) ** 2;
 * const points = [2, 4, 6, 8, 10, 14, 18].map((dosage) => ({ dosage, response: strength(dosage) }));
 * fitDosageLadder(points).optimum.value // 12.000
 * @see Anderson & Nelson (1975), Biometrics 31, 303-318, for plateau models; Bullock & Bullock (1994), Agronomy Journal 86, 191-195,
 * for the quadratic plateau; Bates & Watts (1988), 6.1.2, for the intervals
 */
export function fitDosageLadder(points: readonly DosagePoint[]): DosageLadderFit {
  assertPoints(points);
  const dosages = points.map(({ dosage }) => dosage);
  assertEnough(dosages, 'dosage', LEAST);
  const steps = [...new Set(dosages)].sort((a, b) => a - b);
  const [first, second] = steps;
  const last = steps[steps.length - 1];
  const degreesOfFreedom = points.length - PARAMETERS;

  const best = bestPlateau(points, second, last);
  const limit = profileLimit(best.squares, degreesOfFreedom);
  const replicates = findReplicates(
    dosages,
    points.map(({ response }) => response),
  );
  const warnings = replicateWarnings(replicates, 'dosage', { squares: best.squares, degreesOfFreedom });
  const shared = {
    residualDeviation: Math.sqrt(best.squares / degreesOfFreedom),
    degreesOfFreedom,
    curve: Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const dosage = first + ((last - first) * i) / SAMPLES;
      return { dosage, response: responseAt(best, dosage) };
    }),
  };
  if (!hasEffect(points, best)) return { outcome: 'no-effect', ...shared, warnings };
  const direction = best.curvature > 0 ? 'rising' : 'falling';
  if (best.start >= last) return { outcome: 'no-plateau-reached', direction, ...shared, warnings };

  const noted = (made: ReturnType<typeof fittedQuantity>): FittedQuantity => {
    warnings.push(...made.warnings);
    return made.quantity;
  };
  const far = last + BEYOND * (last - first);
  const profileOfStart = (start: number) => plateauFrom(start, points).squares;
  const bounds = profileBounds(profileOfStart, best.start, limit, { low: second, high: far }, 0.02 * (last - first));
  // Between the first two dosages every start fits alike, with another curvature: what isn't excluded at the second is
  // excluded nowhere above the first.
  const optimum = noted(
    fittedQuantity(
      'optimum dosage',
      best.start,
      { low: bounds.low ?? first, high: bounds.high },
      { first, last, axis: 'dosage' },
    ),
  );
  if (bounds.low === undefined) {
    const message = `The plateau may be reached at ${second} or before; between ${first} and ${second} no dosage was read that could tell where.`;
    warnings.push({ code: 'optimum-not-resolved', path: 'optimum dosage', message });
  }
  if (bounds.high === undefined || bounds.high > last) {
    const message = `The data don't exclude that the response still changes at the highest dosage, ${last}.`;
    warnings.push({ code: 'plateau-not-proven', path: 'optimum dosage', message });
  }
  warnings.push(...fallingOff(points, steps, direction));
  const span = Math.abs(best.plateau - responseAt(best, first));
  const plateau = noted(
    fittedQuantity(
      'plateau',
      best.plateau,
      profileBounds(
        (held) => profileOfPlateau(held, points, { low: second, high: far }),
        best.plateau,
        limit,
        { low: best.plateau - 100 * span, high: best.plateau + 100 * span },
        0.02 * span,
      ),
    ),
  );
  return { outcome: 'plateau', optimum, plateau, direction, ...shared, warnings };
}

function bestPlateau(points: readonly DosagePoint[], second: number, last: number): QuadraticPlateau {
  const squares = (start: number) => plateauFrom(start, points).squares;
  const within = searchMinimum(squares, second, last, STEPS);
  const beyond = searchMinimum((x) => squares(last + (last - second) * Math.expm1(x)), 0, Math.log1p(BEYOND), STEPS);
  return plateauFrom(within.value <= beyond.value ? within.at : last + (last - second) * Math.expm1(beyond.at), points);
}

function hasEffect(points: readonly DosagePoint[], best: QuadraticPlateau): boolean {
  const n = points.length;
  const responses = points.map(({ response }) => response);
  const total = squaresAroundMean(responses);
  // Rounding alone leaves about this much of a ladder that is flat.
  if (total <= n * (mean(responses) * 1e-14) ** 2) return false;
  const ratio = (total - best.squares) / (PARAMETERS - 1) / (best.squares / (n - PARAMETERS));
  return ratio > fisherQuantile(0.95, PARAMETERS - 1, n - PARAMETERS);
}

/**
 * Too much of an additive can harm: says so if the highest dosage falls short of the plateau that the others show, by more
 * than they scatter.
 */
function fallingOff(
  points: readonly DosagePoint[],
  steps: readonly number[],
  direction: 'rising' | 'falling',
): Warning[] {
  const last = steps[steps.length - 1];
  const before = steps[steps.length - 2];
  const others = points.filter(({ dosage }) => dosage < last);
  const there = points.filter(({ dosage }) => dosage === last);
  const degreesOfFreedom = others.length - PARAMETERS;
  if (steps.length <= LEAST.steps || degreesOfFreedom < 1) return [];
  const { start, plateau, squares } = bestPlateau(others, steps[1], before);
  const onPlateau = others.filter(({ dosage }) => dosage >= start).length;
  if (onPlateau === 0) return [];
  const reached = mean(there.map(({ response }) => response));
  const short = direction === 'rising' ? plateau - reached : reached - plateau;
  const variance = (squares / degreesOfFreedom) * (1 / there.length + 1 / onPlateau);
  if (!(short > 0 && short ** 2 > variance * fisherQuantile(0.95, 1, degreesOfFreedom))) return [];
  const message = `The response at the highest dosage, ${last}, falls short of the plateau by more than the points scatter: is that too much?`;
  return [{ code: 'falls-off', path: String(last), message }];
}
