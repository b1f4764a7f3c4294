import { TintladderError } from '../../core/index.js';
import { assertNonEmptyArray, assertObject, assertOneOf, assertOptions, assertString } from '../../core/internal.js';
import { LEVELS, type Level, levelPlural } from '../readings/level.js';
import { readNest, readRepeated } from '../readings/read-repeated.js';
import type { Repeated } from '../readings/repeated.js';
import { componentsOf, type VarianceComponent } from '../variance/nested-components.js';
import type { Precision } from '../variance/precision.js';
import { meanOfTree } from '../variance/unit-means.js';
import { type ControlChartResult, chartControls } from './chart-controls.js';

/** A reduction of one and the same retained control, made anew. */
export interface Control {
  /** Its strength, on the scale on which studies are evaluated; readings under the name of what was repeated. */
  readonly value: Repeated<number>;
  /** Day on which it was made, such as `2026-03-14`. */
  readonly date?: string | undefined;
}

/** What {@link precisionFromControls} may be told. */
export interface ControlsOptions {
  /**
   * What was made anew for each control.
   *
   * @default 'weighing'
   */
  readonly level?: Level | undefined;
  /** Text for the report, beside how many controls there are and from when to when. */
  readonly source?: string | undefined;
}

/** What {@link precisionFromControls} gives. */
export interface ControlPrecision {
  readonly kind: 'control-precision';
  readonly version: 1;
  /** To pass on as the laboratory's history. */
  readonly precision: Precision;
  readonly components: readonly VarianceComponent[];
  readonly controls: number;
  /** First and last day, where dates were given. */
  readonly from?: string;
  readonly to?: string;
  /** Means of the controls in the order of time: a laboratory that drifts has no precision to speak of. */
  readonly chart: ControlChartResult;
}

/** Controls from which anything can be said. */
const LEAST = 5;

/**
 * A laboratory's precision from reductions of one control that were made again and again.
 *
 * Variance components by {@link varianceComponents}, each with its degrees of freedom, and a chart that tells whether they come from one process.
 *
 * @param controls - of one control, in the order of time
 * @throws TintladderError `too-few-points` below 5 controls or where they don't differ; `invalid-option` for an unknown level;
 * `level-misplaced` for readings at or above `level` within a control; `wrong-type`, and as every function that takes repeated readings
 * @example
 * const controls = [101, 99, 100, 102, 98, 100].map((value) => ({ value: { spot: [value - 0.2, value + 0.2] } }));
 * precisionFromControls(controls).precision.spot // 0.283
 * @see ISO 5725-2:2019 for components of precision; ISO 7870-2 and -6 for the chart
 */
export function precisionFromControls(controls: readonly Control[], options: ControlsOptions = {}): ControlPrecision {
  assertNonEmptyArray(controls, 'controls');
  assertOptions(options, ['level', 'source']);
  const { level = 'weighing', source } = options;
  assertOneOf(level, LEVELS, 'options.level');
  if (controls.length < LEAST) {
    const expected = `at least ${LEAST} controls`;
    throw new TintladderError('too-few-points', { path: 'controls', received: controls.length, expected });
  }
  const means = controls.map((control, i) => {
    assertObject(control, `controls[${i}]`, 'a control with its value');
    if (control.date !== undefined) assertString(control.date, `controls[${i}].date`);
    const read = readRepeated(control.value, `controls[${i}].value`);
    const [outermost] = read.levels;
    if (outermost !== undefined && LEVELS.indexOf(outermost) <= LEVELS.indexOf(level)) {
      const expected = `readings of one of its ${levelPlural(level)}`;
      throw new TintladderError('level-misplaced', { path: `controls[${i}].value`, received: outermost, expected });
    }
    return { value: meanOfTree(read.tree), ...(control.date !== undefined && { label: control.date }) };
  });
  const chart = chartControls(means);
  const { components } = componentsOf([readNest({ [level]: controls.map(({ value }) => value) }, 'controls')]);
  const dates = controls.flatMap(({ date }) => date ?? []).sort();
  const period = dates.length > 0 ? `, ${dates[0]} to ${dates[dates.length - 1]}` : '';
  return {
    kind: 'control-precision',
    version: 1,
    precision: {
      ...Object.fromEntries(components.map(({ level: of, standardDeviation }) => [of, standardDeviation])),
      degreesOfFreedom: Object.fromEntries(
        components.map((component) => [component.level, component.degreesOfFreedom]),
      ),
      source: `${source ?? 'control reductions'}: ${controls.length} of them${period}`,
    },
    components,
    controls: controls.length,
    ...(dates.length > 0 && { from: dates[0], to: dates[dates.length - 1] }),
    chart,
  };
}
