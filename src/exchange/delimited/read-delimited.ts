import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { createFileContext, settleFile } from '../table/file-context.js';
import { refuseEmpty } from '../text/decode-text.js';
import type { Notes } from '../text/notes.js';
import type { TextSink } from '../text/text-sink.js';
import { checkLastNumber } from './last-number.js';
import { blanksAsTabs, findLayout } from './layout.js';
import type { LayoutReader } from './layout-reader.js';
import { createLongReader } from './long-table.js';
import { createRowSplitter, type RowSplitter } from './rows.js';
import { createTransposedReader } from './transposed-table.js';
import { createWideReader } from './wide-table.js';

/** How much text is looked at to find delimiter and layout. */
const LOOKED_AT = 2 ** 18;

/** Reads delimited text that comes in blocks cut anywhere. */
export function createDelimitedReader(
  options: ReaderOptions,
  notes: Notes,
  emit: Emit,
): TextSink<readonly MeasurementTable[]> {
  const file = createFileContext(options, notes, emit);
  let beginning: string | undefined = '';
  let table: LayoutReader | undefined;
  let splitter: RowSplitter | undefined;

  const begin = (text: string, whole: boolean) => {
    const layout = findLayout(wholeLines(text, whole));
    const create = { wide: createWideReader, long: createLongReader, transposed: createTransposedReader }[layout.kind];
    const reader = create(layout, file);
    let before: readonly string[] = [];
    table = reader;
    splitter = createRowSplitter(layout.delimiter, (cells, line, terminated) => {
      if (!terminated) checkLastNumber(cells, before, line, notes);
      before = cells;
      reader.row(cells, line);
    });
    const rows = splitter;
    splitter = layout.blanks ? withoutBlanks(rows) : rows;
    splitter.push(text);
    beginning = undefined;
  };

  return {
    push(text) {
      if (splitter) return splitter.push(text);
      beginning = (beginning ?? '') + text;
      if (beginning.length >= LOOKED_AT) begin(beginning, false);
    },
    end() {
      if (beginning !== undefined) {
        refuseEmpty(beginning);
        begin(beginning, true);
      }
      splitter?.end();
      table?.end();
      return settleFile(file, () => table?.tables() ?? []);
    },
  };
}

/** Line breaks as `\n`; a last line that may be cut is left out. */
function wholeLines(text: string, whole: boolean): string {
  const unified = text.slice(0, LOOKED_AT * 2).replace(/\r\n?/g, '\n');
  return whole ? unified : unified.slice(0, unified.lastIndexOf('\n') + 1) || unified;
}

/** Gathers text whose cells only blanks separate, and hands it on with tabs. */
function withoutBlanks(rows: RowSplitter): RowSplitter {
  const blocks: string[] = [];
  return {
    push: (text) => void blocks.push(text),
    end() {
      rows.push(blanksAsTabs(blocks.join('').replace(/\r\n?/g, '\n')));
      rows.end();
    },
  };
}
