/**
 * The quantities that a study computes from its readings, with their units and their names in a sentence. A criterion may name
 * any of these or a supplied quantity.
 *
 * @example COMPUTED_QUANTITIES['rub-out'].unit // 'ΔE*ab'
 */
export const COMPUTED_QUANTITIES = Object.freeze({
  /** Against the reference package. */
  strength: { unit: '%', name: 'relative tinting strength' },
  /** ΔE00 that remains when the trial is brought to the strength of the reference. */
  residual: { unit: 'ΔE00', name: 'residual difference at equal strength' },
  /** Rubbed against unrubbed area. */
  'rub-out': { unit: 'ΔE*ab', name: 'rub-out difference' },
  /** The stored colorant against the same colorant fresh. */
  'strength-after-storage': { unit: '%', name: 'strength after storage' },
  'rub-out-after-storage': { unit: 'ΔE*ab', name: 'rub-out difference after storage' },
  /** Time of the reference minus that of the package, both to 90 % of the final strength of the reference. */
  'grinding-time-saved': { unit: 'min', name: 'grinding time saved' },
  'time-to-95': { unit: 'min', name: 'grinding time to 95 % of the final strength' },
  /** Dosage at which more additive brings no more strength; the study states its unit. */
  'optimum-dosage': { unit: undefined, name: 'dosage at the start of the plateau' },
  'additive-share': { unit: '%', name: 'additive in the finished colorant' },
} as const);

/** A quantity that a study computes. */
export type ComputedQuantity = keyof typeof COMPUTED_QUANTITIES;

/** Whether a quantity is computed, and not supplied. */
export function isComputed(quantity: string): quantity is ComputedQuantity {
  return Object.hasOwn(COMPUTED_QUANTITIES, quantity);
}

/** The unit of a computed quantity; undefined for any other, and for the dosage, whose unit the study states. */
export function unitOf(quantity: string): string | undefined {
  return isComputed(quantity) ? COMPUTED_QUANTITIES[quantity].unit : undefined;
}

/**
 * A quantity as a sentence names it; a supplied one keeps the name that the study gives it.
 *
 * @param quantity - computed or supplied
 * @returns its name
 * @example quantityName('rub-out') // 'rub-out difference'
 * @example quantityName('viscosity') // 'viscosity'
 */
export function quantityName(quantity: string): string {
  return isComputed(quantity) ? COMPUTED_QUANTITIES[quantity].name : quantity;
}
