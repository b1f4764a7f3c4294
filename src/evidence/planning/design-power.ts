import { normalProbability, studentQuantile } from '../../numeric/internal.js';
import { loadingOf, manyToOneCritical } from '../multiplicity/many-to-one.js';
import { overScatter } from '../multiplicity/over-scatter.js';
import type { KnownVariances } from '../variance/precision.js';
import { sumOfVariances } from '../variance/variance-term.js';
import { type Design, levelsOf, varianceOfDesign } from './design.js';

/** What is measured and how it is judged. */
export interface PlannedStudy {
  readonly components: Design;
  readonly known: KnownVariances;
  /** Sides that are made alike and share their scatter. */
  readonly sides: number;
  /** Critical value of their comparisons with one of them, all together, at a number of degrees of freedom. */
  criticalAt(degreesOfFreedom: number): number;
}

/** The critical values of several sides against one of them; each is looked for once. */
export function criticalValues(sides: number, rate: number): PlannedStudy['criticalAt'] {
  const found = new Map<number, number>();
  const loadings = Array<number>(sides - 1).fill(loadingOf(1, 2));
  return (degreesOfFreedom) => {
    const critical =
      found.get(degreesOfFreedom) ??
      (sides > 2
        ? manyToOneCritical(rate, { loadings, degreesOfFreedom, sided: 'two' })
        : studentQuantile(1 - rate / 2, degreesOfFreedom));
    found.set(degreesOfFreedom, critical);
    return critical;
  };
}

/** How well a design knows a difference of two sides. */
export interface DesignPower {
  readonly standardDeviation: number;
  /** Degrees of freedom of today's scatter; 0 where nothing is repeated and all comes from history. */
  readonly degreesOfFreedom: number;
  /** Half the width of the joint interval to expect. */
  readonly halfWidth: number;
  /** Chance that a true difference is decided. */
  power(difference: number): number;
}

/**
 * The interval and the power to expect of a design.
 *
 * Power is exact for a pooled scatter: the mean over what the scatter may be estimated as (the noncentral t distribution). With a history the
 * larger of both counts, as in the comparison itself.
 *
 * @returns undefined where a design repeats nothing of its outermost level and no history tells of it
 */
export function designPower(
  design: Design,
  { components, known, sides, criticalAt }: PlannedStudy,
): DesignPower | undefined {
  const [top] = levelsOf(components);
  const repeated = design[top] ?? 1;
  const degreesOfFreedom = sides * (repeated - 1);
  const history = known.has(top) ? historyDegrees(design, known) : undefined;
  if (degreesOfFreedom === 0 && history === undefined) return undefined;
  const standardDeviation = Math.sqrt(2 * varianceOfDesign(design, components));
  const today = degreesOfFreedom > 0 ? criticalAt(degreesOfFreedom) : 0;
  const floor = history === undefined ? 0 : criticalAt(history);
  const reach = (s: number) => (history === undefined || s > 1 ? today * s : floor);
  const mostly = degreesOfFreedom > 0 ? overScatter(reach, degreesOfFreedom) : floor;
  return {
    standardDeviation,
    degreesOfFreedom,
    halfWidth: mostly * standardDeviation,
    power: (difference) => {
      const distance = Math.abs(difference) / standardDeviation;
      const decided = (s: number) => normalProbability(distance - reach(s));
      return degreesOfFreedom > 0 ? overScatter(decided, degreesOfFreedom) : decided(0);
    },
  };
}

function historyDegrees(design: Design, known: KnownVariances): number {
  let units = 1;
  const terms = [...known].map(([level, { variance, degreesOfFreedom }]) => {
    units *= design[level] ?? 1;
    return { variance: variance / units, degreesOfFreedom };
  });
  return sumOfVariances(terms).degreesOfFreedom;
}
