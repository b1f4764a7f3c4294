import { assertNonEmptyArray, assertObject, assertOneOf, assertOptions } from '../core/internal.js';
import { WRITERS } from './formats.js';
import { asMeasurement } from './measurement/as-measurement.js';
import type { Measurement } from './measurement/measurement.js';

/** How {@link writeMeasurements} writes. */
export interface WriteOptions {
  readonly format: keyof typeof WRITERS;
}

const WRITTEN = ['delimited-text', 'iso-28178', 'iso-17972'] as const satisfies readonly WriteOptions['format'][];

/**
 * Writes measurements as text: what {@link readMeasurements} reads from it is what was written (line numbers aside).
 *
 * Reflectance is written in fractions with all digits. Measurements on other grids or under other conditions start a new table.
 *
 * @param measurements - at least one
 * @param options - `delimited-text` (commas, one column per wavelength), `iso-28178` keyword text or `iso-17972` XML
 * @returns the text, with `\n` line breaks
 * @throws TintladderError `empty`, `invalid-option`, `unknown-illuminant` for an illuminant without a standard name; `wrong-type` or `not-finite` for
 * what is no measurement
 * @example writeMeasurements(readMeasurements('Sample;400;410\nwhite;92,4;92,5\n').measurements, { format: 'delimited-text' })
 * // 'Reflectance,0-1\nSample name,400 nm,410 nm\nwhite,0.924,0.925\n'
 * @see RFC 4180; ISO 28178; ISO 17972-1
 */
export function writeMeasurements(measurements: readonly Measurement[], options: WriteOptions): string {
  assertNonEmptyArray(measurements, 'measurements');
  assertObject(options, 'options');
  assertOptions(options, ['format']);
  const { format } = options;
  assertOneOf(format, WRITTEN, 'options.format');
  return WRITERS[format](measurements.map((measurement, i) => asMeasurement(measurement, `measurements[${i}]`)));
}
