import type { Spectrum, Viewing } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid, assertViewing } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertArray, assertObject, assertOptions } from '../core/internal.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { assertSurface } from '../kubelka-munk/internal.js';
import { mean, studentQuantile, variance } from '../numeric/internal.js';
import { assertCriterion, type StrengthCriterion } from './criteria/strength-criterion.js';
import type { AmountExponent } from './linearity/amount-exponent.js';
import { relativeTintingStrength } from './relative-tinting-strength.js';

/** One step of a ladder of reductions of one colorant in one white. */
export interface LadderStep {
  /** Colorant per white, in any one unit of mass, > 0 */
  readonly amount: number;
  /** Measured reflectance */
  readonly spectrum: Spectrum;
}

/**
 * The exponent of the caller's own ladder: how the absorption that a colorant adds grows with its amount.
 *
 * Each step is compared with the next by the criterion; the logarithm of the apparent ratio over that of the true one is the exponent
 * between them. Its mean is given with the bounds that hold the exponent of another pair of steps (Student's t for a single further
 * value), so that a ladder that bends leaves them wide.
 *
 * @param ladder - the white base and at least three steps of different amounts
 * @param options - criterion, viewing and surface, as the strength will be found
 * @returns exponent and 95 % bounds, with the basis `ladder`
 * @throws TintladderError `too-few-points` for fewer than three different amounts; `out-of-range` for an amount that is not positive;
 * `not-increasing` if the bounds reach 0, so that nothing can be said; `grid-mismatch`; `wrong-type`; `invalid-option`; otherwise as `relativeTintingStrength`
 * @example
 * const flat = (F) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(reflectanceFromKOverS(F)), scale: 'fraction' });
 * const steps = [0.05, 0.1, 0.2, 0.4].map((amount) => ({ amount, spectrum: flat(amount ** 0.9) }));
 * const options = { criterion: 'kubelka-munk-sum', viewing: D65_10, surface: 'none' };
 * fitAmountExponent({ white: flat(0), steps }, options).exponent // 0.900
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, for the interval of a single further value
 */
export function fitAmountExponent(
  ladder: { readonly white: Spectrum; readonly steps: readonly LadderStep[] },
  options: {
    readonly criterion: StrengthCriterion;
    readonly viewing: Viewing;
    readonly surface: SurfaceCorrection;
  },
): AmountExponent {
  assertObject(ladder, 'ladder', 'the white and the steps');
  assertOptions(ladder, ['white', 'steps'], 'ladder');
  assertObject(options, 'options', 'criterion, viewing and surface');
  assertOptions(options, ['criterion', 'viewing', 'surface']);
  const { criterion, viewing, surface } = options;
  assertCriterion(criterion);
  assertViewing(viewing, 'options.viewing');
  assertSurface(surface, 'options.surface');
  const white = asSpectrum(ladder.white, 'ladder.white');
  assertArray(ladder.steps, 'ladder.steps');
  const steps = ladder.steps.map((step, i) => readStep(step, white, `ladder.steps[${i}]`));
  const sorted = [...steps].sort((a, b) => a.amount - b.amount);
  const pairs = sorted
    .slice(1)
    .flatMap((step, i) => (step.amount > sorted[i].amount ? [[sorted[i], step] as const] : []));
  if (pairs.length < 2) {
    throw new TintladderError('too-few-points', {
      path: 'ladder.steps',
      received: pairs.length + 1,
      expected: 'at least three different amounts',
    });
  }
  const exponents = pairs.map(([weaker, stronger]) => {
    const { percent } = relativeTintingStrength(weaker.spectrum, stronger.spectrum, { ...options, white });
    return Math.log(percent / 100) / Math.log(stronger.amount / weaker.amount);
  });
  const exponent = mean(exponents);
  const further = Math.sqrt(variance(exponents) * (1 + 1 / exponents.length));
  const half = studentQuantile(0.975, exponents.length - 1) * further;
  if (!(exponent - half > 0)) {
    throw new TintladderError('not-increasing', {
      path: 'ladder.steps',
      received: [exponent - half, exponent + half],
      expected: 'a ladder along which the absorption rises with the amount, beyond its own scatter',
      hint: 'Leave out steps near saturation, or read more steps.',
    });
  }
  return {
    kind: 'amount-exponent',
    version: 1,
    exponent,
    low: exponent - half,
    high: exponent + half,
    level: 0.95,
    criterion,
    basis: 'ladder',
    source: `a ladder of ${pairs.length + 1} steps`,
    pairs: pairs.length,
  };
}

function readStep(step: LadderStep, white: Spectrum, path: string): LadderStep {
  assertObject(step, path, 'an amount with its spectrum');
  const { amount } = step;
  if (!(typeof amount === 'number' && amount > 0 && amount < Infinity)) {
    const expected = 'a finite amount above 0';
    throw new TintladderError('out-of-range', { path: `${path}.amount`, received: amount, expected });
  }
  const spectrum = asSpectrum(step.spectrum, `${path}.spectrum`);
  assertSameGrid(white, spectrum, `${path}.spectrum`);
  return { amount, spectrum };
}
