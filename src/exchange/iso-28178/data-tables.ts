import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';
import type { TextSink } from '../text/text-sink.js';
import { createTokenSplitter, type TokenLine } from './tokens.js';

/** The heading of one `BEGIN_DATA` ... `END_DATA`, with the keywords before it. */
export interface DataFormat {
  /** Field names. */
  readonly fields: readonly string[];
  /** Line of `BEGIN_DATA_FORMAT`. */
  readonly line: number;
  /** Keywords in force with their values, in the order of the file. */
  readonly keywords: readonly Keyword[];
}

export interface Keyword {
  /** Upper case. */
  readonly word: string;
  readonly value: string;
  readonly line: number;
}

/** Takes the rows of one table. */
export type RowSink = (cells: readonly string[], line: number) => void;

interface Open {
  readonly kind: 'format' | 'data';
  readonly line: number;
  lastLine: number;
}

/** Keywords that count, and belong to the table that follows. */
const COUNTS = /^(?:NUMBER_OF_|SPECTRAL_)/;

/**
 * Reads the data tables of keyword text that comes in blocks cut anywhere, row by row.
 *
 * @param begin - starts a table and gives what takes its rows
 * @throws TintladderError `truncated` for a block that does not end; `no-header` for data without a format; `count-mismatch` where a stated
 * number of fields or sets is not met; `row-length`; `malformed`
 */
export function createDataTableReader(begin: (format: DataFormat) => RowSink): TextSink<void> {
  const keywords = new Map<string, Keyword[]>();
  let fields: string[] = [];
  let formatLine: number | undefined;
  let open: Open | undefined;
  let rows: RowCollector | undefined;

  const stated = (word: string) => keywords.get(word)?.at(-1)?.value;

  const openData = (line: number) => {
    if (formatLine === undefined || fields.length === 0) {
      throw new TintladderError('no-header', {
        path: cellPlace(line, 1),
        received: 'BEGIN_DATA',
        expected: 'BEGIN_DATA_FORMAT before it',
      });
    }
    const format = { fields, line: formatLine, keywords: [...keywords.values()].flat() };
    rows = createRowCollector(fields.length, Number(stated('NUMBER_OF_SETS')), begin(format));
    open = { kind: 'data', line, lastLine: line };
  };

  const close = (current: Open) => {
    if (current.kind === 'format') {
      expectCount('NUMBER_OF_FIELDS', fields.length, 'field names', current.line, stated('NUMBER_OF_FIELDS'));
    } else {
      const count = rows?.end() ?? 0;
      expectCount('NUMBER_OF_SETS', count, 'rows', current.line, stated('NUMBER_OF_SETS'));
    }
    open = undefined;
  };

  const take = (current: TokenLine) => {
    const [first, ...values] = current.tokens;
    const word = first.toUpperCase();
    if (open) {
      open.lastLine = current.line;
      const ends = open.kind === 'format' ? 'END_DATA_FORMAT' : 'END_DATA';
      if (word === ends) close(open);
      else if (/^(BEGIN|END)_DATA(_FORMAT)?$/.test(word)) throw blockFault(current, word, ends);
      else if (open.kind === 'format') fields.push(...current.tokens);
      else rows?.add(current);
    } else if (word === 'BEGIN_DATA_FORMAT') {
      fields = [];
      formatLine = current.line;
      open = { kind: 'format', line: current.line, lastLine: current.line };
    } else if (word === 'BEGIN_DATA') openData(current.line);
    else if (word === 'END_DATA' || word === 'END_DATA_FORMAT') throw blockFault(current, word, 'a keyword');
    else if (values.length > 0) {
      const keyword = { word, value: values.join(' '), line: current.line };
      // counts hold once; conditions add up, the later ones being nearer
      const before = COUNTS.test(word) ? [] : (keywords.get(word) ?? []);
      keywords.delete(word);
      keywords.set(word, [...before, keyword]);
    }
  };
  const splitter = createTokenSplitter(take);

  return {
    push: splitter.push,
    end() {
      splitter.end();
      if (!open) return;
      throw new TintladderError('truncated', {
        path: cellPlace(open.lastLine, 1),
        received: '',
        expected: open.kind === 'format' ? 'END_DATA_FORMAT' : 'END_DATA',
        hint: 'The file is cut off; export it again.',
      });
    },
  };
}

function blockFault({ line }: TokenLine, received: string, expected: string): TintladderError {
  return new TintladderError('malformed', { path: cellPlace(line, 1), received, expected });
}

interface RowCollector {
  add(line: TokenLine): void;
  /** Number of rows. */
  end(): number;
}

/**
 * Makes rows of lines: a row per line; rows that run over several lines are joined only where the stated number of sets proves that no value is
 * missing.
 */
function createRowCollector(width: number, sets: number, sink: RowSink): RowCollector {
  let count = 0;
  let wrapped: { readonly cells: string[]; readonly first: TokenLine } | undefined;
  /** The first line that was too short, for the fault if the joined rows do not come out. */
  let shortest: TokenLine | undefined;
  const hand = (cells: readonly string[], line: number) => {
    count++;
    sink(cells, line);
  };
  return {
    add(current) {
      if (wrapped) {
        wrapped.cells.push(...current.tokens);
        if (wrapped.cells.length > width) throw rowLength(shortest ?? current, width);
        if (wrapped.cells.length < width) return;
        hand(wrapped.cells, wrapped.first.line);
        wrapped = undefined;
        return;
      }
      const cells = rowCells(current, width);
      if (cells) return hand(cells, current.line);
      if (!(sets > 0) || current.tokens.length > width) throw rowLength(current, width);
      shortest ??= current;
      wrapped = { cells: [...current.tokens], first: current };
    },
    end() {
      if (shortest && (wrapped || count !== sets)) throw rowLength(shortest, width);
      return count;
    },
  };
}

/** Cells of one row: its tokens, or its tab-separated parts where names hold blanks. */
function rowCells({ tokens, text }: TokenLine, width: number): readonly string[] | undefined {
  if (tokens.length === width) return tokens;
  if (!text.includes('\t')) return undefined;
  const parts = text.replace(/\t+[ ]*$/, '').split('\t');
  return parts.length === width ? parts.map((part) => part.trim().replace(/^"([^"]*)"$/, '$1')) : undefined;
}

function rowLength({ tokens, line }: TokenLine, width: number): TintladderError {
  return new TintladderError('row-length', {
    path: cellPlace(line, Math.min(tokens.length, width) + 1),
    received: tokens.length,
    expected: `${width} values, as in the data format`,
  });
}

function expectCount(word: string, found: number, what: string, line: number, stated: string | undefined): void {
  if (stated === undefined || Number(stated) === found) return;
  throw new TintladderError('count-mismatch', {
    path: cellPlace(line, 1),
    received: found,
    expected: `${stated} ${what}, as ${word} says`,
    hint: 'The file may be cut off or edited; export it again.',
  });
}
