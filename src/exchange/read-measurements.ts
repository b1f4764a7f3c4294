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
 * stood in the file and what was assumed. Nothing is half-read: a fault anywhere refuses the file. Every colour keeps the viewing that the file
 * states for it, and is compared with the spectrum beside it.
 *
 * @param input - the file as text or bytes (UTF-8, UTF-16 with a byte-order mark, else Windows-1252)
 * @param options - what the caller knows better than the file: scale, quantity, names, what is left out; limits
 * @returns the readings in the order of the file, its tables, and warnings: `percent-assumed`, `fraction-assumed`, `reflectance-assumed`,
 * `dark-readings`, `colour-disagrees`, `condition-contradicted`, `condition-not-understood`, `viewing-not-stated`, `name-column-guessed`,
 * `names-numbered`, `statistics-left-out`, `columns-kept-as-text`, `negative-noise` and others
 * @throws TintladderError with line and column: `empty-file`, `not-text`, `file-too-large`, `unknown-format`, `no-header`,
 * `grid-invalid`, `wavelengths-uneven`, `wavelength-repeated`, `not-a-number`, `row-length`, `scale-mixed`,
 * `reflectance-out-of-range`, `out-of-range`, `unsupported-quantity`, `count-mismatch`, `truncated`, `malformed`; `invalid-option`;
 * `wrong-type` for an input that is neither text nor bytes
 * @example readMeasurements('Sample;400;410\nwhite;92,1;92,4\n').measurements[0].spectrum.values[1] // 0.924
 * @example readMeasurements('Sample,400,410\nblack,1.4,1.5\n') // throws reflectance-out-of-range
 * @example readMeasurements('Sample,K/S 400,K/S 410\nblue,0.5,1\n', { quantity: 'K/S' }).measurements[0].spectrum.values[0] // 0.38197
 * @see RFC 4180 for delimited text
 */
export function readMeasurements(
  input: string | ArrayBuffer | ArrayBufferView,
  options: ReadOptions = {},
): MeasurementFile {
  const checked = checkReadOptions(options);
  const source = typeof input === 'string' ? input : bytesOf(input);
  if (source.length > checked.maxBytes) {
    throw new TintladderError('file-too-large', {
      path: 'the file',
      received: source.length,
      expected: `at most ${checked.maxBytes} bytes`,
      hint: 'Pass a larger maxBytes, or read it with readMeasurementStream.',
    });
  }
  const notes = createNotes();
  const text = decodeText(source, notes);
  const format = checked.format ?? recogniseFormat(text.beginning);
  const measurements: Measurement[] = [];
  const reader = READERS[format](checked, notes, (measurement) => measurements.push(measurement));
  for (const block of text.blocks()) reader.push(block);
  const tables = reader.end();
  return { kind: 'measurement-file', version: 1, format, measurements, tables, warnings: notes.list() };
}

function bytesOf(input: ArrayBuffer | ArrayBufferView): Uint8Array {
  if (input instanceof Uint8Array) return input;
  if (ArrayBuffer.isView(input)) return new Uint8Array(input.buffer, input.byteOffset, input.byteLength);
  if (input instanceof ArrayBuffer) return new Uint8Array(input);
  throw new TintladderError('wrong-type', { path: 'input', received: input, expected: 'text or bytes' });
}
