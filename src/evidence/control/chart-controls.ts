import { TintladderError } from '../../core/index.js';
import {
  assertBetween,
  assertNonEmptyArray,
  assertObject,
  assertOptions,
  refuseNonFinite,
} from '../../core/internal.js';
import { mean } from '../../numeric/internal.js';

/** One control reduction or batch, in the order of time. */
export interface ControlPoint {
  readonly value: number;
  /** Date or number, for the picture. */
  readonly label?: string | undefined;
}

/** What {@link chartControls} may be told. */
export interface ControlChartOptions {
  /** Where the process should be; the mean of the baseline where left out. */
  readonly centre?: number | undefined;
  /** Of one point; from the moving ranges of the baseline where left out. */
  readonly standardDeviation?: number | undefined;
  /** How many of the first points are the baseline; all of them where left out. */
  readonly baseline?: number | undefined;
  /**
   * Weight of the newest point in the moving average.
   *
   * @default 0.25
   */
  readonly weight?: number | undefined;
  /**
   * Distance of the limits from the centre, in standard deviations of what is charted.
   *
   * @default 3
   */
  readonly width?: number | undefined;
  /** Where the moving average starts; the centre where left out. */
  readonly start?: number | undefined;
}

/** The three charts; only the moving average gives signals. */
export const CONTROL_CHARTS = ['moving-average', 'individual', 'moving-range'] as const;

/** One of {@link CONTROL_CHARTS}. */
export type ControlChart = (typeof CONTROL_CHARTS)[number];

/** A point with what is charted of it. */
export interface ChartedPoint extends ControlPoint {
  /** Exponentially weighted moving average. */
  readonly movingAverage: number;
  /** Distance from the point before; absent for the first. */
  readonly movingRange?: number;
  /** Charts on which it lies beyond the limits. */
  readonly beyond: readonly ControlChart[];
}

/** Limits of one chart. */
export interface ControlLimits {
  readonly low: number;
  readonly high: number;
}

/** What {@link chartControls} gives. */
export interface ControlChartResult {
  readonly kind: 'control-chart';
  readonly version: 1;
  readonly centre: number;
  readonly standardDeviation: number;
  /** How many points centre and standard deviation come from; absent where both were stated. */
  readonly limitsFrom?: number;
  readonly limits: Readonly<Record<ControlChart, ControlLimits>>;
  readonly points: readonly ChartedPoint[];
  /** Points at which the moving average lies beyond its limits. */
  readonly signals: readonly { readonly index: number; readonly direction: 'high' | 'low' }[];
}

/** Mean range of two normal values in standard deviations, and its limit at three standard deviations of the range (ISO 7870-2, n = 2). */
const MEAN_RANGE = 1.128;
const RANGE_LIMIT = 3.686;
/** Limits from fewer points say little. */
const LEAST_BASELINE = 5;

/**
 * Control charts of single values: exponentially weighted moving average, individuals and moving ranges.
 *
 * Signals come from the moving average alone, which finds a shift of 1.5 standard deviations in about 5 points and errs once in about 500; the
 * three together would err once in about 94. The others are for the eye.
 *
 * @param points - in the order of time
 * @param options - what is stated of the process; otherwise it is estimated from the baseline
 * @throws TintladderError `empty`; `not-finite`; `wrong-type`; `invalid-option`; `too-few-points` where a scatter must be estimated from fewer
 * than 5 points, or those don't scatter
 * @example
 * const values = [48, 52, 70, 62].map((value) => ({ value }));
 * chartControls(values, { centre: 62, standardDeviation: 12, start: 60 }).points[0].movingAverage // 57
 * @see ISO 7870-6 (EWMA), ISO 7870-2 (individuals and moving ranges); Lucas & Saccucci (1990), Technometrics 32, 1, for run lengths
 */
export function chartControls(points: readonly ControlPoint[], options: ControlChartOptions = {}): ControlChartResult {
  assertNonEmptyArray(points, 'points');
  assertOptions(options, ['centre', 'standardDeviation', 'baseline', 'weight', 'width', 'start']);
  points.forEach((point, i) => {
    assertObject(point, `points[${i}]`, 'a point with its value');
    refuseNonFinite(point.value, `points[${i}].value`);
  });
  const { weight = 0.25, width = 3, baseline = points.length } = options;
  assertBetween(weight, 0, 1, 'options.weight');
  assertBetween(width, 0, 10, 'options.width');
  if (!Number.isInteger(baseline) || baseline < 1 || baseline > points.length) {
    const expected = `a whole number from 1 to ${points.length}`;
    throw new TintladderError('invalid-option', { path: 'options.baseline', received: baseline, expected });
  }
  const values = points.map(({ value }) => value);
  const { centre, standardDeviation, estimated } = processOf(values.slice(0, baseline), options);
  const { start = centre } = options;
  refuseNonFinite(start, 'options.start');
  const around = (reach: number): ControlLimits => ({ low: centre - reach, high: centre + reach });
  const limits = {
    'moving-average': around(width * standardDeviation * Math.sqrt(weight / (2 - weight))),
    individual: around(width * standardDeviation),
    'moving-range': { low: 0, high: RANGE_LIMIT * standardDeviation },
  };
  let movingAverage = start;
  const charted = points.map((point, i): ChartedPoint => {
    movingAverage = weight * point.value + (1 - weight) * movingAverage;
    const movingRange = i > 0 ? Math.abs(point.value - values[i - 1]) : undefined;
    const shown = { 'moving-average': movingAverage, individual: point.value, 'moving-range': movingRange ?? 0 };
    const beyond = CONTROL_CHARTS.filter(
      (chart) => shown[chart] < limits[chart].low || shown[chart] > limits[chart].high,
    );
    return { ...point, movingAverage, ...(movingRange !== undefined && { movingRange }), beyond };
  });
  return {
    kind: 'control-chart',
    version: 1,
    centre,
    standardDeviation,
    ...(estimated && { limitsFrom: baseline }),
    limits,
    points: charted,
    signals: charted.flatMap(({ beyond, movingAverage: shown }, index) =>
      beyond.includes('moving-average')
        ? [{ index, direction: shown > centre ? ('high' as const) : ('low' as const) }]
        : [],
    ),
  };
}

function processOf(baseline: readonly number[], options: ControlChartOptions) {
  const { centre = mean(baseline), standardDeviation } = options;
  refuseNonFinite(centre, 'options.centre');
  if (standardDeviation !== undefined) {
    if (typeof standardDeviation !== 'number' || !(standardDeviation > 0 && standardDeviation < Infinity)) {
      const path = 'options.standardDeviation';
      throw new TintladderError('invalid-option', { path, received: standardDeviation, expected: 'a positive number' });
    }
    return { centre, standardDeviation, estimated: options.centre === undefined };
  }
  const ranges = baseline.slice(1).map((value, i) => Math.abs(value - baseline[i]));
  const estimate = baseline.length < LEAST_BASELINE ? 0 : mean(ranges) / MEAN_RANGE;
  if (!(estimate > 0)) {
    throw new TintladderError('too-few-points', {
      path: 'points',
      received: baseline.length,
      expected: `at least ${LEAST_BASELINE} points that scatter, to estimate a standard deviation from`,
      hint: 'State the standard deviation of one point, from earlier work.',
    });
  }
  return { centre, standardDeviation: estimate, estimated: true };
}
