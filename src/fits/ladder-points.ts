import { TintladderError, type Warning } from '../core/index.js';
import { fisherQuantile, squaresAroundMean } from '../numeric/internal.js';

/**
 * Refuses points that are no numbers of at least 0.
 *
 * @throws TintladderError `not-finite`, `out-of-range`
 */
export function assertPoints(points: readonly object[]): void {
  points.forEach((point, i) => {
    for (const [name, value] of Object.entries(point)) {
      const path = `points[${i}].${name}`;
      if (typeof value !== 'number' || !Number.isFinite(value)) {
        throw new TintladderError('not-finite', { path, received: value, expected: 'a finite number' });
      }
      if (value < 0)
        throw new TintladderError('out-of-range', { path, received: value, expected: 'a number of at least 0' });
    }
  });
}

/**
 * Refuses a ladder with fewer different steps or fewer points than a fit needs.
 *
 * @throws TintladderError `too-few-points`
 */
export function assertEnough(steps: readonly number[], axis: string, needed: { steps: number; points: number }): void {
  const different = new Set(steps).size;
  if (different < needed.steps) {
    throw new TintladderError('too-few-points', {
      path: `number of different ${axis}s`,
      received: different,
      expected: `at least ${needed.steps}`,
      hint: `Points at the same ${axis} are replicates of one step.`,
    });
  }
  if (steps.length < needed.points) {
    throw new TintladderError('too-few-points', {
      path: 'number of points',
      received: steps.length,
      expected: `at least ${needed.points}`,
    });
  }
}

/** Scatter of points at the same step around their mean: what no curve can explain. */
export interface Replicates {
  readonly groups: readonly { readonly at: number; readonly count: number }[];
  readonly squares: number;
  readonly degreesOfFreedom: number;
}

/** Groups the points by their step; only steps with several points are listed. */
export function findReplicates(steps: readonly number[], values: readonly number[]): Replicates {
  const byStep = new Map<number, number[]>();
  for (const [i, step] of steps.entries()) byStep.set(step, [...(byStep.get(step) ?? []), values[i]]);
  const several = [...byStep].filter(([, group]) => group.length > 1);
  let squares = 0;
  for (const [, group] of several) squares += squaresAroundMean(group);
  return {
    groups: several.map(([at, group]) => ({ at, count: group.length })),
    squares,
    degreesOfFreedom: several.reduce((sum, [, group]) => sum + group.length - 1, 0),
  };
}

/**
 * Says which steps were read several times and, where they show it, that the curve misses the means by more than the
 * replicates scatter (F test for lack of fit at 5 %).
 *
 * @see Draper & Smith, Applied Regression Analysis, chapter on lack of fit and pure error
 */
export function replicateWarnings(
  { groups, squares, degreesOfFreedom }: Replicates,
  axis: string,
  fit: { readonly squares: number; readonly degreesOfFreedom: number },
): Warning[] {
  if (groups.length === 0) return [];
  const warnings: Warning[] = [
    {
      code: 'replicates',
      path: groups.map(({ at }) => at).join(', '),
      message: `Points at the same ${axis} are taken as replicates: ${groups
        .map(({ at, count }) => `${count} at ${at}`)
        .join(', ')}.`,
    },
  ];
  const lackFreedom = fit.degreesOfFreedom - degreesOfFreedom;
  if (lackFreedom > 0 && squares > 0) {
    const ratio = (fit.squares - squares) / lackFreedom / (squares / degreesOfFreedom);
    if (ratio > fisherQuantile(0.95, lackFreedom, degreesOfFreedom)) {
      warnings.push({
        code: 'lack-of-fit',
        message:
          'The curve misses the means of the replicates by more than they scatter; another shape lies behind the data.',
      });
    }
  }
  return warnings;
}
