import { assertString } from '../core/internal.js';
import { SERIES_KINDS, type SeriesField } from './series-kinds.js';

/** What is computed without a series, with its unit and its name in a sentence. */
export const CELL_QUANTITIES = Object.freeze({
  /** Against the reference package. */
  strength: { unit: '%', name: 'relative tinting strength' },
  /** ΔE00 that remains when the trial is brought to the strength of the reference. */
  residual: { unit: 'ΔE00', name: 'residual difference at equal strength' },
  /** Rubbed against unrubbed area. */
  'rub-out': { unit: 'ΔE*ab', name: 'rub-out difference' },
  /** The stored colorant against the same colorant fresh. */
  'strength-after-storage': { unit: '%', name: 'strength after storage' },
  'rub-out-after-storage': { unit: 'ΔE*ab', name: 'rub-out difference after storage' },
  'additive-share': { unit: '%', name: 'additive in the finished colorant' },
} as const);

/** A quantity that a study computes. */
export type ComputedQuantity = keyof typeof CELL_QUANTITIES | SeriesQuantity;

type SeriesQuantity = QuantityOf<(typeof SERIES_KINDS)[SeriesField]>;

type QuantityOf<Kind> = Kind extends { readonly quantities: infer Quantities } ? keyof Quantities & string : never;

/** Unit of a quantity, undefined where the study states it, and its name in a sentence. */
export interface QuantityNaming {
  readonly unit: string | undefined;
  readonly name: string;
}

/**
 * The quantities that a study computes from its readings, with their units and their names in a sentence: those of each
 * package in each paint, and those that every kind of series adds. A criterion may name any of these or a supplied quantity.
 *
 * @example COMPUTED_QUANTITIES['rub-out'].unit // 'ΔE*ab'
 */
export const COMPUTED_QUANTITIES: Readonly<Record<ComputedQuantity, QuantityNaming>> = Object.freeze(
  Object.assign({}, CELL_QUANTITIES, ...Object.values(SERIES_KINDS).map(({ quantities }) => quantities)),
);

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
 * @throws TintladderError `wrong-type` for what is no text
 * @example quantityName('rub-out') // 'rub-out difference'
 * @example quantityName('viscosity') // 'viscosity'
 */
export function quantityName(quantity: string): string {
  assertString(quantity, 'quantity');
  return isComputed(quantity) ? COMPUTED_QUANTITIES[quantity].name : quantity;
}
