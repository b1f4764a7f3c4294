import type { StrengthCriterion } from '../criteria/strength-criterion.js';

/** Where an exponent may come from: a ladder of the caller's own, or the measured oil paints. */
export const EXPONENT_BASES = Object.freeze(['ladder', 'oil-paints'] as const);

/** One of {@link EXPONENT_BASES}. */
export type ExponentBasis = (typeof EXPONENT_BASES)[number];

/**
 * How the absorption of a colorant in white grows with its amount (colorant per white): as `amount^exponent`. Single-constant theory has
 * 1; a colorant that scatters, a wrong surface and a tint near saturation make it smaller.
 */
export interface AmountExponent {
  readonly kind: 'amount-exponent';
  readonly version: 1;
  readonly exponent: number;
  /** Bounds for another pair of reductions */
  readonly low: number;
  readonly high: number;
  /** Share of such pairs that the bounds are meant to hold */
  readonly level: number;
  readonly criterion: StrengthCriterion;
  readonly basis: ExponentBasis;
  /** The basis in words, for a reader of the result */
  readonly source: string;
  /** How many pairs of reductions it was found from */
  readonly pairs: number;
}
