import { TintladderError } from '../core/index.js';
import { READERS, recogniseFormat } from './formats.js';
import type { Measurement } from './measurement/measurement.js';
import type { MeasurementFile } from './measurement-file.js';
import { checkReadOptions, type ReadOptions } from './read-options.js';
import { decodeText } from './text/decode-text.js';
import { createNotes } from './text/notes.js';

/**
 * Readings from a measurement file, whose format it recognises.
 *
 * Reflectance comes out in fractions on an evenly spaced grid in ascending order, whatever the file's own way; `tables` and `warnings` say what
 * stood in the file and what was assumed. Nothing is half-read: a fault anywhere refuses the file.
 *
 * @param input - the file as text or bytes (UTF-8, UTF-16 with a byte-order mark, else Windows-1252)
 * @param options - format and scale, where the file's own word or values are not to decide; limits
 * @returns the readings in the order of the file, its tables, and warnings: `percent-assumed`, `fraction-assumed`, `decimal-comma`,
 * `columns-kept-as-text`, `wavelengths-descending`, `wavelengths-rounded`, `several-grids`, `names-numbered`, `viewing-not-stated` and others
 * @throws TintladderError with line and column: `empty-file`, `not-text`, `file-too-large`, `unknown-format`, `no-header`,
 * `grid-invalid`, `wavelengths-uneven`, `wavelength-repeated`, `not-a-number`, `row-length`, `scale-mixed`,
 * `reflectance-out-of-range`, `out-of-range`, `unsupported-quantity`, `count-mismatch`, `truncated`, `malformed`, `invalid-option`
 * @example readMeasurements('Sample;400;410\nwhite;92,1;92,4\n').measurements[0].spectrum.values[1] // 0.924
 * @example readMeasurements('Sample,400,410\nwhite,92.1,0.924\n') // throws scale-mixed
 * @see RFC 4180 for delimited text
 */
export function readMeasurements(input: string | Uint8Array, options: ReadOptions = {}): MeasurementFile {
  const checked = checkReadOptions(options);
  const size = typeof input === 'string' ? input.length : input.byteLength;
  if (size > checked.maxBytes) {
    throw new TintladderError('file-too-large', {
      path: 'the file',
      received: size,
      expected: `at most ${checked.maxBytes} bytes`,
      hint: 'Pass a larger maxBytes, or read it with readMeasurementStream.',
    });
  }
  const notes = createNotes();
  const text = decodeText(input, notes);
  const format = checked.format ?? recogniseFormat(text.beginning);
  const measurements: Measurement[] = [];
  const reader = READERS[format](checked, notes, (measurement) => measurements.push(measurement));
  for (const block of text.blocks()) reader.push(block);
  const tables = reader.end();
  return { format, measurements, tables, warnings: notes.list() };
}
