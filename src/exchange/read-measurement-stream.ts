import { TintladderError, type Warning } from '../core/index.js';
import { markedEncoding, refuseControlCharacters, refuseKnownBinary } from './decode-text.js';
import { createDelimitedReader, type DelimitedReader } from './delimited/read-delimited.js';
import type { Measurement, MeasurementTable, ReflectanceScale } from './measurement.js';
import { createNotes } from './notes.js';
import { checkReadOptions } from './read-options.js';

/** How {@link readMeasurementStream} reads. */
export interface StreamOptions {
  /** Scale of the reflectance, over anything the file says. @default what the file says, else decided by its values */
  readonly scale?: ReflectanceScale;
  /** What to do with readings outside 360-830 nm. @default 'refuse' */
  readonly outsideRange?: 'refuse' | 'drop';
  /** Told after each block how far the reading has come. */
  readonly onProgress?: (progress: StreamProgress) => void;
  /** Told at the end what the file held and what had to be assumed. */
  readonly onEnd?: (summary: StreamSummary) => void;
}

export interface StreamProgress {
  readonly bytes: number;
  readonly measurements: number;
}

export interface StreamSummary {
  readonly tables: readonly MeasurementTable[];
  readonly warnings: readonly Warning[];
}

/**
 * Reads delimited text of any size as it arrives, one measurement after another: those that {@link readMeasurements} gives for the whole.
 *
 * Memory stays bounded for wide tables; transposed and long ones are gathered first, since a sample is spread over the whole of them. A
 * fault ends the reading where it stands, when earlier measurements have been handed out already. Text that is no UTF-8 must have a
 * byte-order mark.
 *
 * @param stream - bytes of the file, such as the body of a response or `Readable.toWeb(createReadStream(path))`
 * @param options - scale and range as for {@link readMeasurements}, and who is told of progress and end
 * @returns the measurements in the order of the file
 * @throws TintladderError as {@link readMeasurements} does
 * @example
 * const names = [];
 * for await (const { name } of readMeasurementStream(new Blob(['Sample,400,410\nwhite,92,93\n']).stream())) names.push(name);
 * names // ['white']
 * @see WHATWG Streams for `ReadableStream`
 */
export async function* readMeasurementStream(
  stream: ReadableStream<Uint8Array>,
  options: StreamOptions = {},
): AsyncGenerator<Measurement, void, undefined> {
  const { onProgress, onEnd, ...reading } = options;
  const checked = checkReadOptions(reading);
  const notes = createNotes();
  let ready: Measurement[] = [];
  let measurements = 0;
  let bytes = 0;
  const table: DelimitedReader = createDelimitedReader(checked, notes, (measurement) => ready.push(measurement));
  const decode = createStreamDecoder();

  const take = (text: string) => {
    refuseControlCharacters(text);
    if (text !== '') table.push(text);
  };

  const source = stream.getReader();
  try {
    for (let part = await source.read(); !part.done; part = await source.read()) {
      bytes += part.value.length;
      take(decode(part.value));
      const batch = ready;
      ready = [];
      measurements += batch.length;
      yield* batch;
      onProgress?.({ bytes, measurements });
    }
    take(decode());
    const tables = table.end();
    yield* ready;
    onEnd?.({ tables, warnings: notes.list() });
  } finally {
    await source.cancel().catch(() => undefined);
  }
}

/** Enough bytes to tell a byte-order mark and the kinds of file that are no text. */
const TELLING_BYTES = 4;

/** Decodes bytes that come in pieces; a call without bytes ends the text. */
function createStreamDecoder(): (piece?: Uint8Array) => string {
  let decoder: TextDecoder | undefined;
  let held: Uint8Array = new Uint8Array();
  let position = 0;
  return (piece) => {
    position += piece?.length ?? 0;
    let bytes: Uint8Array = piece ?? new Uint8Array();
    if (!decoder) {
      bytes = Uint8Array.of(...held, ...bytes.subarray(0, TELLING_BYTES));
      if (piece && bytes.length < TELLING_BYTES) {
        held = bytes;
        return '';
      }
      refuseKnownBinary(bytes);
      decoder = new TextDecoder(markedEncoding(bytes) ?? 'utf-8', { fatal: true });
      const rest = piece?.subarray(TELLING_BYTES) ?? new Uint8Array();
      return decodePart(decoder, bytes, true, position) + decodePart(decoder, rest, piece !== undefined, position);
    }
    return decodePart(decoder, bytes, piece !== undefined, position);
  };
}

function decodePart(decoder: TextDecoder, bytes: Uint8Array, more: boolean, position: number): string {
  try {
    return decoder.decode(bytes, { stream: more });
  } catch {
    throw new TintladderError('not-text', {
      path: `before byte ${position}`,
      received: `bytes that are no ${decoder.encoding.toUpperCase()}`,
      expected: 'UTF-8, or UTF-16 with a byte-order mark,',
      hint: 'Convert the file, or read it whole with readMeasurements, which reads Windows-1252 too.',
    });
  }
}
