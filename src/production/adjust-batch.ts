import { TintladderError, type Warning } from '../core/index.js';
import { assertBetween, assertObject, assertOneOf, assertOptions, formatFixed } from '../core/internal.js';
import type { Interval } from '../decision/index.js';
import { additionFor, type Balance, strengthAfter } from './addition.js';
import {
  BATCH_CORRECTIONS,
  BATCH_KINDS,
  type BatchCorrection,
  type BatchKind,
  CORRECTION_RULES,
} from './correction.js';
import { addInQuadrature, assertAbove, ends, type KnownStrength, knownStrength } from './known-strength.js';

/** What is known of the batch and of what may be added to it. */
export interface AdjustBatchOptions {
  readonly kind: BatchKind;
  /** Mass of the batch, kg. */
  readonly mass: number;
  readonly correction: BatchCorrection;
  /** Strength of what is added; stated for another batch and a mill base, 100 % for a colorant if left out. */
  readonly added?: KnownStrength | undefined;
  /** Share of colorant in the paint, mass %; stated for paints. */
  readonly colorantShare?: number | undefined;
  /** The largest addition that the vessel holds, kg. */
  readonly largest?: number | undefined;
  /** Step of the scale, kg: the addition is rounded to a whole number of them. */
  readonly scaleStep?: number | undefined;
  /** Residual colour difference at equal strength, and the limit of the same unit that it must not pass. */
  readonly residual?: { readonly value: number; readonly limit: number } | undefined;
}

/** What to add to a batch, and what to expect of it then. */
export interface BatchAdjustment {
  readonly kind: 'batch-adjustment';
  readonly version: 1;
  readonly correction: BatchCorrection;
  /** kg to add, rounded to the scale and no more than the vessel holds. */
  readonly addition: number;
  /** kg before rounding and limits. */
  readonly exactAddition: number;
  /** 95 % interval of the exact addition, kg, from those of the strengths; absent where neither has one. */
  readonly interval?: Interval;
  /** Mass afterwards, kg. */
  readonly massAfter: number;
  /** Strength expected afterwards, %: 100 but for rounding and the vessel. */
  readonly expected: { readonly percent: number; readonly interval?: Interval };
  /** What else the addition changes. */
  readonly changes: readonly string[];
  readonly warnings: readonly Warning[];
}

/** Beyond this distance from 100 %, strength is no longer in proportion to the amount of colorant to within a percent or so. */
const LINEAR_WITHIN = 20;

const NAMES = ['kind', 'mass', 'correction', 'added', 'colorantShare', 'largest', 'scaleStep', 'residual'] as const;

/**
 * What to add to a batch whose strength is off, so that it has the strength of its standard.
 *
 * A colorant that is too strong is thinned with vehicle or a weak batch, one that is too weak takes a strong batch or mill base. A tinted
 * paint isn't mended by vehicle, which thins pigment and white alike: it takes white base where it is too strong and colorant where it is
 * too weak. The balance is that of single-constant theory, strength per mass of colorant; the adjusted batch has to be measured again.
 *
 * @param strength - relative tinting strength of the batch against its standard, %, with its 95 % interval where there is one
 * @param options - kind, mass and correction; strength of what is added; vessel, scale, residual
 * @returns kg to add with interval, strength expected afterwards, what else changes, and warnings: `adjustment-not-proven` where the
 * interval of the strength holds 100 %, `shade-not-strength` where the residual is above its limit, `adjustment-limited` by the vessel,
 * `strength-far-from-standard`
 * @throws TintladderError `invalid-option` for a correction that doesn't suit the kind of batch or its strength, or that lacks what it needs;
 * `out-of-range`; `invalid-interval`; `wrong-type`
 * @example adjustBatch({ percent: 104 }, { kind: 'colorant', mass: 500, correction: 'vehicle' }).addition // 20
 * @example adjustBatch({ percent: 95 }, { kind: 'colorant', mass: 400, correction: 'mill-base', added: { percent: 140 } }).addition // 50
 * @see Kubelka & Munk (1931) for the additivity of absorption; the balance itself is common practice, no source
 */
export function adjustBatch(strength: KnownStrength, options: AdjustBatchOptions): BatchAdjustment {
  const checked = check(strength, options);
  const { balance, batch, added, rule } = checked;
  const exact = additionFor(balance, batch.percent, added.percent);
  const interval = addInQuadrature(exact, [
    ends(batch, (percent) => additionFor(balance, percent, added.percent)),
    ends(added, (percent) => additionFor(balance, batch.percent, percent)),
  ]);
  const { scaleStep, largest = Number.POSITIVE_INFINITY } = options;
  const fits = Math.min(exact, largest);
  const rounded = scaleStep === undefined ? fits : scaleStep * roundTo(fits / scaleStep, fits < exact);
  const after = (percent: number, ofAdded: number) => strengthAfter(balance, rounded, percent, ofAdded);
  const percent = after(batch.percent, added.percent);
  const expectedInterval = addInQuadrature(percent, [
    ends(batch, (one) => after(one, added.percent)),
    ends(added, (one) => after(batch.percent, one)),
  ]);
  return {
    kind: 'batch-adjustment',
    version: 1,
    correction: balance.correction,
    addition: rounded,
    exactAddition: exact,
    ...(interval && { interval }),
    massAfter: balance.mass + rounded,
    expected: { percent, ...(expectedInterval && { interval: expectedInterval }) },
    changes: rule.changes,
    warnings: notes(batch, exact, percent, options),
  };
}

/** Down where the vessel is the limit, else to the nearest step. */
function roundTo(steps: number, limited: boolean): number {
  // A quotient such as 2.9999999996 is 3 steps.
  return limited ? Math.floor(steps + 1e-9) : Math.round(steps);
}

function check(strength: KnownStrength, options: AdjustBatchOptions) {
  assertObject(options, 'options');
  assertOptions(options, NAMES);
  const { kind, mass, correction, colorantShare, largest, scaleStep, residual } = options;
  assertOneOf(kind, BATCH_KINDS, 'options.kind');
  assertOneOf(correction, BATCH_CORRECTIONS, 'options.correction');
  const batch = knownStrength(strength, 'strength');
  for (const [name, value] of Object.entries({
    mass,
    ...(largest !== undefined && { largest }),
    ...(scaleStep !== undefined && { scaleStep }),
  })) {
    assertAbove(value, `options.${name}`, 'a mass above 0 kg');
  }
  if (residual !== undefined) {
    assertObject(residual, 'options.residual');
    assertAbove(residual.limit, 'options.residual.limit', 'a colour difference above 0');
    if (!(typeof residual.value === 'number' && residual.value >= 0 && residual.value < Infinity)) {
      throw new TintladderError('out-of-range', {
        path: 'options.residual.value',
        received: residual.value,
        expected: 'a colour difference',
      });
    }
  }
  const rule = CORRECTION_RULES[correction];
  const mends = batch.percent >= 100 ? 'too-strong' : 'too-weak';
  if (rule.kind !== kind || rule.mends !== mends) {
    const suited = BATCH_CORRECTIONS.filter(
      (one) => CORRECTION_RULES[one].kind === kind && CORRECTION_RULES[one].mends === mends,
    );
    throw new TintladderError('invalid-option', {
      path: 'options.correction',
      received: correction,
      expected: `${suited.join(' or ')} for a ${kind} of ${formatFixed(batch.percent, 1)} %`,
    });
  }
  const added = addedStrength(options.added, rule.strength);
  if (kind === 'paint' || colorantShare !== undefined) assertBetween(colorantShare, 0, 100, 'options.colorantShare');
  const balance: Balance = { correction, mass, colorantShare: kind === 'paint' ? (colorantShare ?? 0) / 100 : 0 };
  return { balance, batch, added, rule };
}

function addedStrength(
  given: KnownStrength | undefined,
  needed: 'none' | 'below' | 'above' | 'optional',
): KnownStrength {
  if (needed === 'none') {
    if (given === undefined) return { percent: 0 };
    throw new TintladderError('invalid-option', {
      path: 'options.added',
      received: given,
      expected: 'no strength of what is added, since it holds no colorant',
    });
  }
  if (needed === 'optional' && given === undefined) return { percent: 100 };
  const added = knownStrength(given, 'options.added');
  const suits = needed === 'optional' || (needed === 'above' ? added.percent > 100 : added.percent < 100);
  if (suits) return added;
  throw new TintladderError('out-of-range', {
    path: 'options.added.percent',
    received: added.percent,
    expected: `a strength ${needed} 100 %`,
  });
}

function notes(
  { percent, interval }: KnownStrength,
  exact: number,
  after: number,
  { residual, largest }: AdjustBatchOptions,
): Warning[] {
  const found: Warning[] = [];
  if (interval && interval.low <= 100 && interval.high >= 100) {
    found.push({
      code: 'adjustment-not-proven',
      message: 'The interval of the strength holds 100 %: nothing proves that this batch needs an adjustment.',
      figures: { percent, low: interval.low, high: interval.high },
    });
  }
  if (residual && residual.value > residual.limit) {
    found.push({
      code: 'shade-not-strength',
      message: `At equal strength a colour difference of ${formatFixed(residual.value, 2)} is left, above the limit of ${formatFixed(residual.limit, 2)}: the shade is off, which no change of strength mends.`,
      figures: { residual: residual.value, limit: residual.limit },
    });
  }
  if (largest !== undefined && exact > largest) {
    found.push({
      code: 'adjustment-limited',
      message: `The vessel holds ${largest} kg more, the strength asks for ${exact.toPrecision(3)} kg: the batch will have ${formatFixed(after, 1)} %.`,
      figures: { largest, exact, after },
    });
  }
  if (Math.abs(percent - 100) > LINEAR_WITHIN) {
    found.push({
      code: 'strength-far-from-standard',
      message:
        'So far from 100 % strength is not in proportion to the amount of colorant: add a part, measure, and adjust again.',
      figures: { percent },
    });
  }
  return found;
}
