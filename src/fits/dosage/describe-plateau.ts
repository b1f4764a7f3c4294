import { fisherQuantile, mean, squaresAroundMean } from '../../numeric/internal.js';
import type { LadderStep } from '../ladder/ladder-steps.js';
import { searchMinimum } from '../ladder/profile-interval.js';
import { type DosagePoint, plateauFrom, type QuadraticPlateau, responseAt } from './quadratic-plateau.js';

/**
 * What the curve of a dosage ladder does. `plateau`: the response levels off within the ladder; `no-plateau-reached`: it still changes at
 * the highest dosage; `no-effect`: the dosages don't differ by more than the points scatter.
 */
export const DOSAGE_OUTCOMES = ['plateau', 'no-plateau-reached', 'no-effect'] as const;

/** One of {@link DOSAGE_OUTCOMES}. */
export type DosageOutcome = (typeof DOSAGE_OUTCOMES)[number];

/** A quadratic plateau as fitted to a ladder. */
export interface LadderCurve {
  readonly outcome: DosageOutcome;
  /** Where the fitted plateau starts and its height; only with the outcome `plateau`. A description of the curve, no optimum. */
  readonly plateau?: DosagePoint;
  /** Whether the response rises (strength) or falls (rub-out) towards the plateau; absent without an effect */
  readonly direction?: 'rising' | 'falling';
  /** Standard deviation of the points around the curve, with n - p degrees of freedom */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  /** The fitted curve at 101 dosages from the lowest to the highest one read, for plotting */
  readonly curve: readonly DosagePoint[];
}

const PARAMETERS = 3;
const SAMPLES = 100;
/** How far beyond the ladder, in lengths of it, the start of the plateau is looked for. */
const BEYOND = 20;
/** Steps of the search over the start within the ladder, and beyond it. */
const STEPS = 200;

/** Fits the quadratic plateau by least squares with constant scatter. */
export function describePlateau(steps: readonly LadderStep[]): LadderCurve {
  const points = steps.flatMap(({ at, units }) => units.map((response) => ({ dosage: at, response })));
  const [first, second] = steps.map(({ at }) => at);
  const last = steps[steps.length - 1].at;
  const degreesOfFreedom = points.length - PARAMETERS;
  const best = bestPlateau(points, second, last);
  const shared = {
    residualDeviation: Math.sqrt(best.squares / degreesOfFreedom),
    degreesOfFreedom,
    curve: Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const dosage = first + ((last - first) * i) / SAMPLES;
      return { dosage, response: responseAt(best, dosage) };
    }),
  };
  if (!hasEffect(points, best)) return { outcome: 'no-effect', ...shared };
  const direction = best.curvature > 0 ? 'rising' : 'falling';
  if (best.start >= last) return { outcome: 'no-plateau-reached', direction, ...shared };
  return { outcome: 'plateau', plateau: { dosage: best.start, response: best.plateau }, direction, ...shared };
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
