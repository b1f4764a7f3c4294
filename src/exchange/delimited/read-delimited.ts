import { TintladderError } from '../../core/index.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { createFileContext, settleFile } from '../table/file-context.js';
import { cellPlace } from '../text/cell-place.js';
import { refuseEmpty } from '../text/decode-text.js';
import type { Notes } from '../text/notes.js';
import type { TextSink } from '../text/text-sink.js';
import { findLayout } from './layout.js';
import { createLongReader } from './long-table.js';
import { createRowSplitter, type RowSplitter } from './rows.js';
import { createTransposedReader } from './transposed-table.js';
import { createWideReader, type LayoutReader } from './wide-table.js';

/** How much text is looked at to find delimiter and layout. */
const LOOKED_AT = 2 ** 18;
/** Fewer numbers than this say nothing of the decimals a file prints. */
const ENOUGH_NUMBERS = 20;

/** Reads delimited text that comes in blocks cut anywhere. */
export function createDelimitedReader(
  options: ReaderOptions,
  notes: Notes,
  emit: Emit,
): TextSink<readonly MeasurementTable[]> {
  const file = createFileContext(options.scale, notes, emit);
  let beginning: string | undefined = '';
  let table: LayoutReader | undefined;
  let splitter: RowSplitter | undefined;

  const begin = (text: string, whole: boolean) => {
    const { kind, delimiter, headingRow } = findLayout(wholeLines(text, whole));
    const create = { wide: createWideReader, long: createLongReader, transposed: createTransposedReader }[kind];
    const reader = create(headingRow, file, options);
    let before: readonly string[] = [];
    table = reader;
    splitter = createRowSplitter(delimiter, (cells, line, terminated) => {
      if (!terminated) refuseCutNumber(cells, before, line);
      before = cells;
      reader.row(cells, line);
    });
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

/**
 * Refuses a last number that is cut: its line has no end, and it has fewer decimals than all the numbers before it in a file that prints
 * a fixed number of them.
 */
function refuseCutNumber(cells: readonly string[], before: readonly string[], line: number): void {
  const decimals = (cell: string) =>
    /^\s*[+-]?\d*[.,](\d*)$/.exec(cell)?.[1].length ?? (/^\s*\d+$/.test(cell) ? 0 : undefined);
  const last = decimals(cells[cells.length - 1]);
  if (last === undefined) return;
  const others = [...before, ...cells.slice(0, -1)]
    .flatMap((cell) => decimals(cell) ?? [])
    .filter((count) => count > 0);
  if (others.length < ENOUGH_NUMBERS || others.some((count) => count <= last)) return;
  throw new TintladderError('truncated', {
    path: cellPlace(line, cells.length),
    received: cells[cells.length - 1],
    expected: 'a number with as many decimals as the others, or a line break',
    hint: 'The file seems to be cut off; if it is whole, end its last line with a line break.',
  });
}
