/**
 * The quantities that a study computes from its readings, with their units. A criterion may name any of these or a supplied
 * quantity.
 */
export const COMPUTED_QUANTITIES = {
  /** Relative tinting strength against the reference package. */
  strength: '%',
  /** ΔE00 that remains when the trial is brought to the strength of the reference. */
  residual: 'ΔE00',
  /** Rubbed against unrubbed area. */
  'rub-out': 'ΔE*ab',
  /** Strength of the stored colorant against the same colorant fresh. */
  'strength-after-storage': '%',
  /** Rub-out of the stored colorant. */
  'rub-out-after-storage': 'ΔE*ab',
  /** Grinding time until the strength of the reference is reached. */
  'time-to-reference': 'min',
  /** Grinding time to 95 % of the final strength. */
  'time-to-95': 'min',
  /** Dosage at which more additive brings no more strength. */
  'optimum-dosage': 'dosage',
  /** Share of additive in the finished colorant. */
  'additive-share': '%',
} as const;

/** A quantity that a study computes. */
export type ComputedQuantity = keyof typeof COMPUTED_QUANTITIES;

/** The unit of a computed quantity; undefined for any other, and for the dosage, whose unit the study states. */
export function unitOf(quantity: string): string | undefined {
  if (quantity === 'optimum-dosage' || !Object.hasOwn(COMPUTED_QUANTITIES, quantity)) return undefined;
  return COMPUTED_QUANTITIES[quantity as ComputedQuantity];
}
