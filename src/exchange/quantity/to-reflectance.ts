import type { Notes } from '../text/notes.js';
import type { Quantity } from './quantity-text.js';

/** What a caller may say that the values of a file are, to have them turned into reflectance. */
export const QUANTITIES_READ = ['reflectance', 'K/S', 'absorbance'] as const;

/** One of {@link QUANTITIES_READ}. */
export type QuantityRead = (typeof QUANTITIES_READ)[number];

/**
 * The reflectance of a K/S value or an absorbance, as a fraction.
 *
 * @see Kubelka & Munk (1931): R = 1 + K/S - sqrt((K/S)² + 2 K/S); absorbance (log 1/R) is -log10 R
 */
export function toReflectance(value: number, quantity: Exclude<QuantityRead, 'reflectance'>): number {
  if (quantity === 'absorbance') return 10 ** -value;
  // the form without a difference of nearly equal numbers
  const root = Math.sqrt(value * value + 2 * value);
  return 1 / (1 + value + root);
}

/** Says that values were turned into reflectance. */
export function noteTurned(quantity: Quantity, path: string, notes: Notes): void {
  const message = `The values are ${quantity}, as the caller says; they were turned into reflectance.`;
  notes.add('turned-into-reflectance', message, path, { quantity });
}
