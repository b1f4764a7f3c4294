import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import type { Notes } from '../text/notes.js';
import { gatherText, type TextSink } from '../text/text-sink.js';
import { createFileContext, type FileContext, settleFile } from './file-context.js';

/** A reader of one file, block by block. */
type Reader = (options: ReaderOptions, notes: Notes, emit: Emit) => TextSink<readonly MeasurementTable[]>;

/** The reader of a format that can be read only once its whole text is there: `read` gives what its tables were, when all are read. */
export function wholeTextReader(read: (text: string, file: FileContext) => () => readonly MeasurementTable[]): Reader {
  return (options, notes, emit) =>
    gatherText((text) => {
      const file = createFileContext(options, notes, emit);
      return settleFile(file, read(text, file));
    });
}
