import { TintladderError } from '../core/index.js';
import { type DecodedText, decodeText } from './decode-text.js';
import { createDelimitedReader } from './delimited/read-delimited.js';
import { createFileContext, type FileContext, settleFile } from './file-context.js';
import { readIso17972 } from './iso-17972/read-iso-17972.js';
import { readIso28178 } from './iso-28178/read-iso-28178.js';
import { readJcampDx } from './jcamp-dx/read-jcamp-dx.js';
import type { Measurement, MeasurementFile, MeasurementFormat, MeasurementTable } from './measurement.js';
import { createNotes, type Notes } from './notes.js';
import { type CheckedReadOptions, checkReadOptions, type ReadOptions } from './read-options.js';
import { recogniseFormat } from './recognise-format.js';

/**
 * Readings from a measurement file, whose format it recognises.
 *
 * Reflectance comes out in fractions on an even grid in ascending order, whatever the file's own way; `tables` and `warnings` say what
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
      received: `${size} bytes`,
      expected: `at most ${checked.maxBytes}`,
      hint: 'Pass a larger maxBytes, or read it with readMeasurementStream.',
    });
  }
  const notes = createNotes();
  const text = decodeText(input, notes);
  const format = checked.format ?? recogniseFormat(text.beginning);
  const measurements: Measurement[] = [];
  const tables = READERS[format](text, checked, notes, (measurement) => measurements.push(measurement));
  return { format, measurements, tables, warnings: notes.list() };
}

type Reader = (
  text: DecodedText,
  options: CheckedReadOptions,
  notes: Notes,
  emit: (measurement: Measurement) => void,
) => readonly MeasurementTable[];

const READERS: Record<MeasurementFormat, Reader> = {
  'delimited-text': readDelimited,
  'iso-28178': whole(readIso28178),
  'iso-17972': whole(readIso17972),
  'jcamp-dx': whole(readJcampDx),
};

function readDelimited(
  text: DecodedText,
  options: CheckedReadOptions,
  notes: Notes,
  emit: (measurement: Measurement) => void,
): readonly MeasurementTable[] {
  const reader = createDelimitedReader(options, notes, emit);
  for (const block of text.blocks()) reader.push(block);
  return reader.end();
}

/** Gives a reader of whole texts what a file's tables share, and settles the file when it is done. */
function whole(
  read: (text: string, file: FileContext, options: CheckedReadOptions) => () => readonly MeasurementTable[],
): Reader {
  return (text, options, notes, emit) => {
    const file = createFileContext(options.scale, notes, emit);
    const tables = read(text.whole(), file, options);
    return settleFile(file, tables);
  };
}
