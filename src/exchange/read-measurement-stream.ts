import { TintladderError, type Warning } from '../core/index.js';
import { assertFunction, assertObject, assertOptions } from '../core/internal.js';
import { type MeasurementFormat, READERS, recogniseFormat } from './formats.js';
import type { Measurement, MeasurementTable } from './measurement/measurement.js';
import { checkReadOptions, READ_OPTIONS, type ReadOptions } from './read-options.js';
import { type ByteSource, piecesOf } from './text/byte-source.js';
import { refuseControlCharacters, refuseEmpty } from './text/decode-text.js';
import { createNotes } from './text/notes.js';
import { createStreamDecoder } from './text/stream-decoder.js';
import type { TextSink } from './text/text-sink.js';

/** How {@link readMeasurementStream} reads: as {@link ReadOptions}, but `maxBytes` has no default. */
export interface StreamOptions extends ReadOptions {
  /** Ends the reading and cancels the stream. */
  readonly signal?: AbortSignal | undefined;
  /** Told after each block how far the reading has come. */
  readonly onProgress?: ((progress: StreamProgress) => void) | undefined;
  /** Told at the end what the file held and what had to be assumed. */
  readonly onEnd?: ((summary: StreamSummary) => void) | undefined;
}

export interface StreamProgress {
  readonly bytes: number;
  readonly measurements: number;
}

export interface StreamSummary {
  readonly format: MeasurementFormat;
  readonly tables: readonly MeasurementTable[];
  readonly warnings: readonly Warning[];
}

const STREAM_OPTIONS = [...READ_OPTIONS, 'signal', 'onProgress', 'onEnd'];

/** Enough text to tell the format by its marks. */
const TELLING_TEXT = 2 ** 16;

/**
 * Reads a file of any format and size as it arrives, one measurement after another: those that {@link readMeasurements} gives for the whole.
 *
 * Memory stays bounded for wide tables of delimited text and for keyword text; where a sample is spread over the whole file, and for XML and
 * JCAMP-DX, the file is gathered first. A fault ends the reading where it stands, when earlier measurements have been handed out already.
 *
 * @param stream - bytes of the file: a web stream such as the body of a response, a Node stream, or any async iterable of bytes
 * @param options - as for {@link readMeasurements}; a signal; who is told of progress and end
 * @returns the measurements in the order of the file
 * @throws TintladderError as {@link readMeasurements} does; the signal's reason when it is aborted
 * @example
 * const names = [];
 * for await (const { name } of readMeasurementStream(new Blob(['Sample,400,410\nwhite,92,93\n']).stream())) names.push(name);
 * names // ['white']
 * @see WHATWG Streams for `ReadableStream`
 */
export async function* readMeasurementStream(
  stream: ByteSource,
  options: StreamOptions = {},
): AsyncGenerator<Measurement, void, undefined> {
  assertObject(options, 'options');
  assertOptions(options, STREAM_OPTIONS);
  const { signal, onProgress, onEnd, ...reading } = options;
  if (signal !== undefined) assertSignal(signal);
  if (onProgress !== undefined) assertFunction(onProgress, 'options.onProgress');
  if (onEnd !== undefined) assertFunction(onEnd, 'options.onEnd');
  const checked = checkReadOptions(reading);
  const limit = reading.maxBytes ?? Number.POSITIVE_INFINITY;
  const notes = createNotes();
  let ready: Measurement[] = [];
  let measurements = 0;
  let bytes = 0;
  let beginning = '';
  let format: MeasurementFormat = 'delimited-text';
  let reader: TextSink<readonly MeasurementTable[]> | undefined;
  const decode = createStreamDecoder(notes);

  const begin = () => {
    format = checked.format ?? recogniseFormat(beginning);
    reader = READERS[format](checked, notes, (measurement) => ready.push(measurement));
    reader.push(beginning);
    beginning = '';
    return reader;
  };
  const take = (text: string) => {
    refuseControlCharacters(text);
    if (reader) reader.push(text);
    else {
      beginning += text;
      if (beginning.length >= TELLING_TEXT) begin();
    }
  };

  for await (const piece of piecesOf(stream, signal)) {
    bytes += piece.length;
    if (bytes > limit) {
      throw new TintladderError('file-too-large', {
        path: 'the file',
        received: bytes,
        expected: `at most ${limit} bytes`,
      });
    }
    take(decode(piece));
    const batch = ready;
    ready = [];
    measurements += batch.length;
    yield* batch;
    onProgress?.({ bytes, measurements });
  }
  take(decode());
  if (!reader) refuseEmpty(beginning);
  const tables = (reader ?? begin()).end();
  yield* ready;
  onEnd?.({ format, tables, warnings: notes.list() });
}

/** Signals of another realm and of a polyfill are signals too. */
function assertSignal(signal: unknown): void {
  const is =
    typeof signal === 'object' && signal !== null && 'throwIfAborted' in signal && 'addEventListener' in signal;
  if (is) return;
  throw new TintladderError('wrong-type', { path: 'options.signal', received: signal, expected: 'an AbortSignal' });
}
