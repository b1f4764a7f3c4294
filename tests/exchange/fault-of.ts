import { readMeasurements, TintladderError } from '../../src/exchange/index.js';

/** The fault that reading an input ends in. */
export function faultOf(input: string | Uint8Array, options = {}): TintladderError {
  try {
    readMeasurements(input, options);
  } catch (error) {
    if (error instanceof TintladderError) return error;
    throw error;
  }
  throw new Error('no fault');
}
