import { TintladderError } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';

/**
 * The laboratory's own history of rub-outs, as standard deviations in any one direction of CIELAB, ΔE*ab. A root mean square of ΔE*ab over
 * repeated readings is on the safe side.
 */
export interface RubOutPrecision {
  /** Of one spot of an area. */
  readonly spot: number;
  /** Of the difference of both areas between drawdowns of one paint, beyond that of the spots; none if left out. */
  readonly drawdown?: number | undefined;
  /** With which it is known; as good as exact if left out. */
  readonly degreesOfFreedom?: number | undefined;
}

/**
 * Variance of a mean difference, in one direction.
 *
 * @param counts - spots of the unrubbed and the rubbed area, drawdown by drawdown
 * @returns with it, how many times the variance of one spot is in the part of the spots
 */
export function varianceOfDifference(
  counts: readonly (readonly [number, number])[],
  { spot, drawdown = 0 }: RubOutPrecision,
): { readonly variance: number; readonly share: number } {
  const n = counts.length;
  const share = counts.reduce((sum, [before, after]) => sum + 1 / before + 1 / after, 0) / (n * n);
  return { variance: spot * spot * share + (drawdown * drawdown) / n, share };
}

/**
 * Refuses a precision that is none.
 *
 * @throws TintladderError `invalid-option`
 */
export function assertPrecision(precision: RubOutPrecision | undefined): void {
  if (precision === undefined) return;
  const path = 'options.precision';
  assertObject(precision, path, 'standard deviations { spot, drawdown, degreesOfFreedom }');
  assertOptions(precision, ['spot', 'drawdown', 'degreesOfFreedom'], path);
  for (const name of ['spot', 'drawdown', 'degreesOfFreedom'] as const) {
    const value = precision[name];
    if (name !== 'spot' && value === undefined) continue;
    if (typeof value === 'number' && value > 0 && value < Number.POSITIVE_INFINITY) continue;
    throw new TintladderError('invalid-option', {
      path: `${path}.${name}`,
      received: value,
      expected: 'a positive number',
    });
  }
}
