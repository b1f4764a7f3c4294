import { TintladderError } from './tintladder-error.js';

/** One reading or several, as a list. */
export function asReadings<Colour extends object>(given: Colour | readonly Colour[], name: string): readonly Colour[] {
  const readings = Array.isArray(given) ? (given as readonly Colour[]) : [given as Colour];
  if (readings.length === 0) {
    throw new TintladderError('empty', { path: name, received: given, expected: 'at least one reading' });
  }
  return readings;
}
