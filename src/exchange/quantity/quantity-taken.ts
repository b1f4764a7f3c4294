import type { Quantity } from './quantity-text.js';
import type { QuantityRead } from './to-reflectance.js';

/**
 * The one decision of what values are: what the file states, what the caller says, and what follows; `undefined` where they can't be read.
 *
 * A caller who says reflectance is believed whatever the file says; one who says K/S or absorbance is believed where the file says the same or
 * nothing.
 */
export function quantityTaken(stated: Quantity | undefined, asked: QuantityRead | undefined): QuantityRead | undefined {
  if (asked === 'reflectance') return 'reflectance';
  if (asked !== undefined) return stated === undefined || stated === asked ? asked : undefined;
  return stated === undefined || stated === 'reflectance' ? 'reflectance' : undefined;
}
