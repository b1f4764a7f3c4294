import { TintladderError } from '../../core/index.js';
import { assertArray, assertObject, refuseNonFinite } from '../../core/internal.js';
import type { Repeated } from '../../evidence/index.js';
import { describeRepetition, meanOfTree, type ReadRepeated, readRepeated, unitsAt } from '../../evidence/internal.js';
import { mean } from '../../numeric/internal.js';

/** One step of a ladder: where it stands and what was found there, one figure for each unit that was made anew. */
export interface LadderStep {
  readonly at: number;
  readonly units: readonly number[];
  readonly mean: number;
  /** What was repeated there: `2 weigh-ups`, `3 spots of one film`. */
  readonly noun: string;
}

/** How the fields of a point are called: `time` and `strength`, `dosage` and `response`. */
export interface LadderFields {
  readonly axis: string;
  readonly value: string;
}

/**
 * Reads the points of a ladder. Weigh-ups and grinds of a step are units with a figure of their own; drawdowns and spots of one weigh-up are
 * averaged, since they share the error of that weigh-up and tell nothing of it.
 *
 * @returns the steps in their order
 * @throws TintladderError `wrong-type`, `not-finite`, `out-of-range`; `repetition-unstated` for a step that stands there twice, and what every
 * function throws that takes repeated readings
 */
export function readLadder(
  points: readonly { readonly at: unknown; readonly given: unknown }[],
  { axis, value }: LadderFields,
): LadderStep[] {
  const seen = new Set<unknown>();
  return points.map(({ at, given }, i) => {
    const path = `points[${i}]`;
    assertFromZero(at, `${path}.${axis}`);
    if (seen.has(at)) {
      throw new TintladderError('repetition-unstated', {
        path: `${path}.${axis}`,
        received: at,
        expected: `one point for each ${axis}`,
        hint: `Say what was repeated: { ${axis}: ${at}, ${value}: { weighing: [...] } }.`,
      });
    }
    seen.add(at);
    const read = readRepeated(given as Repeated<number>, `${path}.${value}`);
    for (const { reading, path: place } of read.readings) assertFromZero(reading, place);
    const units = unitsOf(read);
    return { at, units, mean: mean(units), noun: describeRepetition(read).noun };
  });
}

/** The points as objects with both fields. */
export function pointsOf<Point>(points: readonly Point[]): readonly Point[] {
  assertArray(points, 'points');
  points.forEach((point, i) => {
    assertObject(point, `points[${i}]`);
  });
  return points;
}

function unitsOf(read: ReadRepeated<number>): number[] {
  const top = read.levels[read.top];
  const anew = top === 'grind' || top === 'weighing';
  return (anew ? unitsAt(read.tree, read.top).flat() : [read.tree]).map(meanOfTree);
}

function assertFromZero(value: unknown, path: string): asserts value is number {
  refuseNonFinite(value, path);
  if (typeof value === 'number' && value >= 0) return;
  throw new TintladderError('out-of-range', { path, received: value, expected: 'a number of at least 0' });
}

/**
 * Refuses a ladder with fewer steps or fewer units than a fit needs.
 *
 * @throws TintladderError `too-few-points`
 */
export function assertEnough(
  steps: readonly LadderStep[],
  axis: string,
  needed: { readonly steps: number; readonly units: number },
): void {
  const units = steps.reduce((sum, step) => sum + step.units.length, 0);
  for (const [what, found, least] of [
    [`number of ${axis}s`, steps.length, needed.steps],
    ['number of points', units, needed.units],
  ] as const) {
    if (found >= least) continue;
    throw new TintladderError('too-few-points', { path: what, received: found, expected: `at least ${least}` });
  }
}
