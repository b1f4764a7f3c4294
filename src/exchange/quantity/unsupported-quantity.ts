import { TintladderError } from '../../core/index.js';
import type { Quantity } from './quantity-text.js';

/** The fault of a quantity that is no reflectance; one that has a reflectance can be turned into it on request. */
export function unsupportedQuantity(path: string, received: string, quantity?: Quantity): TintladderError {
  const turned = quantity === 'K/S' || quantity === 'absorbance';
  return new TintladderError('unsupported-quantity', {
    path,
    received,
    expected: 'reflectance',
    hint: turned
      ? `Export reflectance, or pass quantity: '${quantity}' to have the values turned into reflectance (quantity: 'reflectance' if that is what they are).`
      : "Export the readings as reflectance; if that is what they are, pass quantity: 'reflectance'.",
  });
}
