import type { Warning } from '../core/index.js';
import { createDelimitedReader } from './delimited/read-delimited.js';
import type { Measurement, MeasurementTable, ReflectanceScale } from './measurement/measurement.js';
import { checkReadOptions } from './read-options.js';
import { refuseControlCharacters } from './text/decode-text.js';
import { createNotes } from './text/notes.js';
import { createStreamDecoder } from './text/stream-decoder.js';

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
  const table = createDelimitedReader(checked, notes, (measurement) => ready.push(measurement));
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
