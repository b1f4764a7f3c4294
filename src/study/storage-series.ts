import { TintladderError } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import { fitStraightLine, studentQuantile } from '../numeric/internal.js';
import type { SeriesKind } from './series-kind.js';

/** A straight line of strength over weeks of storage. */
export interface StorageLine {
  /** Of the line before storage, %. */
  readonly freshStrength: number;
  /** % of the fresh strength per week; negative where strength is lost. */
  readonly perWeek: number;
  readonly interval: Interval;
  readonly degreesOfFreedom: number;
}

const LEAST_POINTS = 4;
const LEAST_WEEKS = 3;

/**
 * Strength over weeks of storage, against the package's own fresh strength, with a straight line: its slope is the change per
 * week. The line is drawn over the weeks that were read and no further.
 */
export const STORAGE_SERIES = {
  id: 'storage',
  label: 'Storage',
  unit: () => 'weeks',
  allowsZero: true,
  describes: {
    reading: 'Weeks of storage, 0 for fresh',
    package: 'Weeks of storage at which the package is judged, 0 (fresh) if left out',
  },
  insteadOf: 'storage',
  against: 'itself',
  unstated: 0,
  judgedAt: () => 0,
  quantities: {
    'strength-per-week': { unit: '% per week', name: 'change of strength per week of storage' },
  },
  caption:
    'Strength over weeks of storage: every reading, and a straight line through those of a package. 100 % is the package itself, fresh.',
  async evaluate(points) {
    const weeks = points.map(({ at }) => at);
    assertEnough(weeks);
    const line = fitStraightLine(
      weeks,
      points.map(({ value }) => value),
    );
    const reach = studentQuantile(0.975, line.degreesOfFreedom) * line.slopeError;
    const interval = { low: line.slope - reach, high: line.slope + reach };
    const fit: StorageLine = {
      freshStrength: line.intercept,
      perWeek: line.slope,
      interval,
      degreesOfFreedom: line.degreesOfFreedom,
    };
    return {
      fit,
      curve: [weeks[0], weeks[weeks.length - 1]].map((at) => ({ at, value: line.intercept + line.slope * at })),
      figures: [
        { quantity: 'strength-per-week', value: line.slope, interval, method: 'straight line over the weeks read' },
      ],
      warnings: [],
    };
  },
} as const satisfies SeriesKind<StorageLine>;

/** A slope on fewer has no scatter worth the name. */
function assertEnough(weeks: readonly number[]): void {
  const different = new Set(weeks).size;
  if (weeks.length >= LEAST_POINTS && different >= LEAST_WEEKS) return;
  throw new TintladderError('too-few-points', {
    path: 'storageWeeks',
    received: weeks,
    expected: `at least ${LEAST_POINTS} readings at ${LEAST_WEEKS} different weeks`,
  });
}
