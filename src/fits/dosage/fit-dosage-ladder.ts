import { TintladderError, type Warning } from '../../core/index.js';
import { assertOneOf, assertOptions } from '../../core/internal.js';
import { DIRECTIONS, type Direction, type Precision, type Repeated } from '../../evidence/index.js';
import { knownVariances } from '../../evidence/internal.js';
import { fallingOff } from '../ladder/falling-off.js';
import { assertEnough, pointsOf, readLadder } from '../ladder/ladder-steps.js';
import { lackOfFit, unitScatter } from '../ladder/unit-scatter.js';
import { describePlateau, type LadderCurve } from './describe-plateau.js';
import type { DosagePoint } from './quadratic-plateau.js';
import { ladderScatter, type StepScatter } from './step-scatter.js';
import { smallestWithinMargin } from './within-margin.js';

/** Response at a dosage, as it was repeated. */
export interface DosageReadings {
  /** Dosage, any unit, >= 0, mostly % on pigment; each once */
  readonly dosage: number;
  /** What was read there, any unit, >= 0: one figure, or repeated ones as `{ grind: [a, b] }` */
  readonly response: Repeated<number>;
}

/** Options of {@link fitDosageLadder}. */
export interface DosageLadderOptions {
  /**
   * Which response is the best: the highest (strength) or the lowest (the colour difference of a rub-out).
   *
   * @default 'highest'
   */
  readonly best?: Direction | undefined;
  /**
   * What may be given away: for the highest in % of it, 2 if left out; for the lowest in the unit of the response, always stated.
   */
  readonly margin?: number | undefined;
  /** Scatter known from earlier work, `{ grind: 1.5, degreesOfFreedom: 12 }` in the unit of the response; never less is used. */
  readonly precision?: Precision | undefined;
}

/** A dosage with the mean of what was read there. */
export interface DosageStep extends DosagePoint {
  /** `one reading`, `3 spots of one film`, `2 grinds`. */
  readonly noun: string;
}

/** What a dosage ladder shows. */
export interface DosageLadderFit extends LadderCurve {
  readonly kind: 'dosage-ladder';
  readonly version: 1;
  /** The smallest dosage shown to lie within the margin of the best; absent where none is shown to. */
  readonly sufficient?: DosageStep;
  /** The dosage with the best mean, which is likely better than it truly is. */
  readonly best: DosageStep;
  /** What may be given away, in the unit of the response. */
  readonly margin: number;
  /** Scatter that the margin was compared with, of one unit. */
  readonly scatter: StepScatter;
  readonly points: readonly DosageStep[];
  readonly warnings: readonly Warning[];
}

const LEAST = { steps: 4, units: 5 };
const DEFAULT_MARGIN = 2;

/**
 * The dosage that suffices: the smallest one shown to lie within a stated margin of the best, undecided where none is.
 *
 * Each dosage is compared with every other: within the margin is what at 95 % confidence gives away no more, whichever is the best. From the
 * best mean downwards all dosages must be. Scatter is that between units that were made anew, grinds or weigh-ups of the dosages, or where
 * there are none that of the points around the curve, and never less than the history's. Spots and drawdowns of one weigh-up are averaged.
 *
 * Beside it the ladder is drawn as a quadratic plateau, `y = P - c (x0 - x)²` up to x0, `y = P` from there on; where the plateau starts is a
 * description of that curve and no optimum. Whether the dosage has an effect at all is an F test of the curve against the mean, at 5 %.
 *
 * @param points - dosage and response in any units and order, each dosage once; at least four dosages and five figures
 * @param options - which response is best; margin; known scatter
 * @returns the sufficient dosage, the best one, the curve; warnings `margin-not-shown`, `lack-of-fit`, `falls-off`
 * @throws TintladderError `too-few-points`, `not-finite`, `out-of-range` for a negative dosage or response; `repetition-unstated` for a dosage
 * that stands there twice; `invalid-option` for a margin that is not positive or, with the lowest, not stated; `precision-invalid`; `wrong-type`
 * @example
 * const strength = (x) => 108 - 0.5 * Math.max(0, 12 - x) ** 2;
 * const points = [2, 4, 6, 8, 10, 14, 18].map((dosage) => ({ dosage, response: { grind: [strength(dosage) - 0.2, strength(dosage) + 0.2] } }));
 * fitDosageLadder(points).sufficient.dosage // 14
 * @see Hsu (1996), Multiple Comparisons, chapter 4; Anderson & Nelson (1975), Biometrics 31, 303-318, for plateau models
 */
export function fitDosageLadder(points: readonly DosageReadings[], options: DosageLadderOptions = {}): DosageLadderFit {
  assertOptions(options, ['best', 'margin', 'precision']);
  const { best: direction = 'highest', precision } = options;
  assertOneOf(direction, DIRECTIONS, 'options.best');
  const known = knownVariances(precision);
  const steps = readLadder(
    pointsOf(points).map(({ dosage, response }) => ({ at: dosage, given: response })),
    { axis: 'dosage', value: 'response' },
  ).sort((a, b) => a.at - b.at);
  assertEnough(steps, 'dosage', LEAST);
  const sign = direction === 'highest' ? 1 : -1;
  const upward = steps.map((step) => ({ ...step, units: step.units.map((y) => sign * y), mean: sign * step.mean }));
  const bestStep = upward.reduce((best, step) => (step.mean > best.mean ? step : best));
  const margin = marginOf(options.margin, direction, bestStep.mean);

  const curve = describePlateau(steps);
  const between = unitScatter(
    steps,
    steps.map(() => 1),
  );
  const scatter = ladderScatter(between, curve, known);
  const found = smallestWithinMargin(upward, margin, scatter);
  const stepAt = (at: number): DosageStep => {
    const { mean, noun } = steps.find((step) => step.at === at) ?? steps[0];
    return { dosage: at, response: mean, noun };
  };
  const rising = upward.map(({ at, mean, units }) => {
    return { at, value: mean, error: scatter.standardDeviation / Math.sqrt(units.length) };
  });
  const around = {
    squares: curve.residualDeviation ** 2 * curve.degreesOfFreedom,
    degreesOfFreedom: curve.degreesOfFreedom,
  };
  return {
    kind: 'dosage-ladder',
    version: 1,
    ...(found && { sufficient: stepAt(found.at) }),
    best: stepAt(bestStep.at),
    margin,
    scatter,
    ...curve,
    points: steps.map(({ at }) => stepAt(at)),
    warnings: [
      ...(found ? [] : noteNotShown(margin, scatter)),
      ...lackOfFit(between, around),
      ...fallingOff(rising, scatter.degreesOfFreedom, 'Is that too much?'),
    ],
  };
}

function marginOf(margin: number | undefined, best: Direction, highest: number): number {
  if (typeof margin === 'number' && margin > 0 && margin < Infinity) {
    return best === 'highest' ? (margin / 100) * highest : margin;
  }
  if (margin === undefined && best === 'highest') return (DEFAULT_MARGIN / 100) * highest;
  const expected =
    best === 'highest' ? 'a positive number of percent' : 'a positive number in the unit of the response';
  throw new TintladderError('invalid-option', { path: 'options.margin', received: margin, expected });
}

function noteNotShown(margin: number, { standardDeviation, degreesOfFreedom, basis }: StepScatter): Warning[] {
  const short = (value: number) => Number(value.toPrecision(3));
  const message =
    `No dosage is shown to lie within ${short(margin)} of the best: units scatter by ${short(standardDeviation)}. ` +
    'Grind the dosages near the best once more each; more spots will not help.';
  return [{ code: 'margin-not-shown', message, figures: { margin, standardDeviation, degreesOfFreedom, basis } }];
}
