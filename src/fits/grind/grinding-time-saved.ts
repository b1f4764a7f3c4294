import { TintladderError, type Warning } from '../../core/index.js';
import { assertObject, assertOptions, assertPositive } from '../../core/internal.js';
import type { Interval } from '../../decision/index.js';
import {
  type Claim,
  compareSides,
  mapRepeated,
  type Precision,
  type Repeated,
  type Repetition,
  type Shortfall,
} from '../../evidence/index.js';
import { describeRepetition, meanOfTree, type ReadRepeated, readRepeated } from '../../evidence/internal.js';
import type { FittedQuantity } from '../ladder/fitted-quantity.js';
import type { GrindCurveFit } from './grind-curve-fit.js';
import type { GrindStep } from './grind-step.js';
import { strengthWithin, type TimeToStrength, timeToStrength } from './time-to-strength.js';

/** Options of {@link grindingTimeSaved}. */
export interface TimeSavedOptions {
  /**
   * The strength to which both are ground, in the unit of the fits.
   *
   * @default 95 % of the highest strength that every run reaches
   */
  readonly strength?: number | undefined;
  /** How much the time of a mill run is known to scatter from run to run, `{ grind: 2, degreesOfFreedom: 10 }` in the unit of the times. */
  readonly precision?: Precision | undefined;
}

/** What a time saved proves. */
export const TIME_FINDINGS = ['faster', 'slower', 'undecided'] as const;

/** One of {@link TIME_FINDINGS}. */
export type TimeFinding = (typeof TIME_FINDINGS)[number];

/** Time that the sample saves against the reference, to the same strength. */
export interface GrindingTimeSaved {
  readonly kind: 'grinding-time-saved';
  readonly version: 1;
  /** Mean time of the reference minus mean time of the sample; positive is time saved. Its interval comes from mill runs. */
  readonly saved: FittedQuantity;
  readonly finding: TimeFinding;
  /** `package` where mill runs were repeated or their scatter is known, otherwise what holds for these runs only. */
  readonly claim: Claim;
  /** 95 % for these very runs: only what the readings of the strength leave open, nothing of another run. */
  readonly ofTheseRuns?: Interval;
  readonly runs: { readonly reference: Repetition; readonly sample: Repetition };
  readonly strength: number;
  readonly referenceTime: number;
  readonly sampleTime: number;
  readonly warnings: readonly Warning[];
}

/**
 * Grinding time saved: the difference of the times at which two colorants reach the same strength in the mill.
 *
 * The unit is the mill run: one run of each differs from the next by more than readings tell, so that the time saved has an interval only
 * where both sides were ground at least twice, `{ grind: [first, second] }`, or where the scatter of a run is known from history. Every run
 * has its own time to the strength, read inside its ladder.
 *
 * @param reference - grind curve without the aid, or those of several runs
 * @param sample - the same with it, in the same units
 * @param options - strength: the one to which both are ground; precision: scatter of mill runs from earlier work
 * @returns time saved with its interval, finding and claim, both times, and warnings `runs-not-repeated`, `interval-open`
 * @throws TintladderError `no-solution` if a run does not pass the strength inside its ladder; `out-of-range` for a strength that
 * is not positive; `precision-invalid`; `wrong-type`; `level-misplaced` for anything but runs; and what every function throws that takes
 * repeated readings
 * @example
 * const ladder = (half) => [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + half) }));
 * grindingTimeSaved(fitGrindCurve(ladder(10)), fitGrindCurve(ladder(5)), { strength: 80 }).saved.value // 10.00
 * @see Zou & Donner (2008), Statistics in Medicine 27, for the interval of these runs from those of both times
 */
export function grindingTimeSaved(
  reference: Repeated<GrindCurveFit>,
  sample: Repeated<GrindCurveFit>,
  options: TimeSavedOptions = {},
): GrindingTimeSaved {
  assertOptions(options, ['strength', 'precision']);
  const runs = { reference: runsOf(reference, 'reference'), sample: runsOf(sample, 'sample') };
  const curves = [...runs.reference.readings, ...runs.sample.readings].map(({ reading }) => risingPoints(reading));
  const { strength = strengthWithin(curves), precision } = options;
  assertPositive({ strength });
  const timesOf = (given: Repeated<GrindCurveFit>, path: string) =>
    mapRepeated(given, (fit, place) => timeOf(fit, strength, place), path);
  const times = { reference: timesOf(reference, 'reference'), sample: timesOf(sample, 'sample') };
  const values = {
    reference: mapRepeated(times.reference, ({ value }) => value),
    sample: mapRepeated(times.sample, ({ value }) => value),
  };
  const [{ againstReference }] = compareSides([{ sides: values, reference: 'reference' }], {
    ...(precision && { precision }),
    claim: 'package',
  }).groups;
  const [{ interval, claim, finding, shortfall }] = againstReference;
  const means = { reference: meanTime(values.reference), sample: meanTime(values.sample) };
  const known = shortfall === undefined && interval !== undefined;
  const own = withinRuns(readRepeated(times.reference, 'reference'), readRepeated(times.sample, 'sample'));
  const saved = means.reference - means.sample;
  const opened = Object.entries(times).flatMap(([path, given]) => noteOpen(readRepeated(given, path)));
  return {
    kind: 'grinding-time-saved',
    version: 1,
    saved: {
      value: saved,
      ...(known && interval && { interval: { low: -interval.high, high: -interval.low } }),
      extrapolated: false,
    },
    finding: !known || finding === 'undecided' ? 'undecided' : finding === 'lower' ? 'faster' : 'slower',
    claim,
    ...(own && { ofTheseRuns: { low: saved - own.low, high: saved + own.high } }),
    runs: { reference: describeRepetition(runs.reference), sample: describeRepetition(runs.sample) },
    strength,
    referenceTime: means.reference,
    sampleTime: means.sample,
    warnings: [...noteRuns(shortfall), ...opened],
  };
}

function noteRuns(shortfall: Shortfall | undefined): Warning[] {
  if (!shortfall) return [];
  const message = `One mill run says nothing of the next: what is saved holds for these runs only. ${shortfall.remedy}`;
  return [{ code: 'runs-not-repeated', path: 'saved', message, figures: { ...shortfall.more } }];
}

function runsOf(given: Repeated<GrindCurveFit>, path: string): ReadRepeated<GrindCurveFit> {
  const read = readRepeated(given, path);
  const other = read.levels.find((level) => level !== 'grind');
  if (other) {
    const hint = 'Weigh-ups, drawdowns and spots belong to the points of one curve.';
    throw new TintladderError('level-misplaced', {
      path,
      received: other,
      expected: 'mill runs, { grind: [...] }',
      hint,
    });
  }
  for (const { reading, path: place } of read.readings) assertGrindCurve(reading, place);
  return read;
}

function assertGrindCurve(fit: unknown, path: string): asserts fit is GrindCurveFit {
  assertObject(fit, path, 'a grind curve of fitGrindCurve');
  if ('kind' in fit && fit.kind === 'grind-curve' && 'version' in fit && fit.version === 1) return;
  const received = 'kind' in fit ? fit.kind : fit;
  throw new TintladderError('wrong-type', { path, received, expected: 'a grind curve of fitGrindCurve' });
}

function risingPoints({ points, risesUntil = Number.POSITIVE_INFINITY }: GrindCurveFit): readonly GrindStep[] {
  return points.filter(({ time }) => time <= risesUntil);
}

function timeOf(fit: GrindCurveFit, strength: number, path: string): TimeToStrength {
  const points = risingPoints(fit);
  const time = timeToStrength(strength, { points, degreesOfFreedom: fit.pointDegreesOfFreedom });
  if (time) return time;
  throw new TintladderError('no-solution', {
    path: `${path} at strength ${strength}`,
    received: points.map((point) => point.strength),
    expected: 'a ladder that passes the strength',
    hint: 'The time to a strength is never extrapolated; choose one that every run passes.',
  });
}

function meanTime(times: Repeated<number>): number {
  return meanOfTree(readRepeated(times, 'times').tree);
}

/** Distances from the time saved to the ends of its interval for these runs; undefined where a ladder leaves an end open. */
function withinRuns(
  reference: ReadRepeated<TimeToStrength>,
  sample: ReadRepeated<TimeToStrength>,
): Interval | undefined {
  const ends = ({ readings }: ReadRepeated<TimeToStrength>) => {
    const intervals = readings.flatMap(({ reading: { value, interval } }) =>
      interval ? [{ value, ...interval }] : [],
    );
    if (intervals.length < readings.length) return undefined;
    const n = intervals.length;
    return {
      low: Math.hypot(...intervals.map(({ value, low }) => value - low)) / n,
      high: Math.hypot(...intervals.map(({ value, high }) => high - value)) / n,
    };
  };
  const [a, b] = [ends(reference), ends(sample)];
  return a && b && { low: Math.hypot(a.low, b.high), high: Math.hypot(a.high, b.low) };
}

function noteOpen({ readings }: ReadRepeated<TimeToStrength>): Warning[] {
  return readings
    .filter(({ reading }) => reading.interval === undefined)
    .map(({ path }) => ({
      code: 'interval-open',
      path,
      message: `The ladder of ${path} ends before the strength is surely reached; its time has no upper end.`,
    }));
}
