import { TintladderError } from '../../core/index.js';

/** The fault of a quantity that is no reflectance, such as K/S or absorbance. */
export function unsupportedQuantity(path: string, quantity: string): TintladderError {
  return new TintladderError('unsupported-quantity', {
    path,
    received: quantity,
    expected: 'reflectance',
    hint: 'Export the readings as reflectance, in fractions or in percent.',
  });
}
