import type { UnitScatter } from '../ladder/unit-scatter.js';

/** Where the scatter of a ladder's units was taken from. */
export const LADDER_SCATTER_BASES = ['units', 'curve', 'history'] as const;

/** One of {@link LADDER_SCATTER_BASES}. */
export type LadderScatterBasis = (typeof LADDER_SCATTER_BASES)[number];

/** Scatter of one unit of a ladder. */
export interface StepScatter {
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly basis: LadderScatterBasis;
}

/** Fewer degrees of freedom between units say less of the scatter than the points around the curve. */
const ENOUGH = 3;

/** The scatter between units, or where there are too few that around the curve; the history's where that is larger. */
export function ladderScatter(
  between: UnitScatter,
  around: { readonly residualDeviation: number; readonly degreesOfFreedom: number },
  known: ReadonlyMap<string, { readonly variance: number; readonly degreesOfFreedom: number }>,
): StepScatter {
  const today: StepScatter =
    between.degreesOfFreedom >= ENOUGH
      ? {
          standardDeviation: Math.sqrt(between.squares / between.degreesOfFreedom),
          degreesOfFreedom: between.degreesOfFreedom,
          basis: 'units',
        }
      : { standardDeviation: around.residualDeviation, degreesOfFreedom: around.degreesOfFreedom, basis: 'curve' };
  const terms = [...known.values()];
  const variance = terms.reduce((sum, term) => sum + term.variance, 0);
  if (!(variance > today.standardDeviation ** 2)) return today;
  const degreesOfFreedom =
    1 / terms.reduce((sum, term) => sum + (term.variance / variance) ** 2 / term.degreesOfFreedom, 0);
  return { standardDeviation: Math.sqrt(variance), degreesOfFreedom, basis: 'history' };
}
