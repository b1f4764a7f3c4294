import Papa from 'papaparse';
import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';

/** Delimiters that are recognised. */
export type Delimiter = ',' | ';' | '\t';

/** Takes one row with the line it starts at; `terminated` is false for a last line without a line break. */
export type RowSink = (cells: string[], line: number, terminated: boolean) => void;

/** Splits text that comes in blocks into rows of cells. */
export interface RowSplitter {
  push(text: string): void;
  end(): void;
}

/** No row of readings is this long: a quoted field that never closes is. */
const LONGEST_ROW = 2 ** 20;

/**
 * Splits delimited text (RFC 4180 and its usual relatives) that comes in blocks cut anywhere; a row is handed on when it is whole.
 *
 * @throws TintladderError `malformed` for a quoted field that does not close, or that goes on after its closing quote
 */
export function createRowSplitter(delimiter: Delimiter, sink: RowSink): RowSplitter {
  const parser = new Papa.Parser({ delimiter, newline: '\n', quoteChar: '"' });
  let rest = '';
  let line = 1;

  const split = (text: string, last: boolean) => {
    const quoted = text.includes('"');
    const { data, errors, meta } = parser.parse(text, 0, !last) as Papa.ParseResult<string[]>;
    for (let i = 0; i < data.length; i++) {
      const cells = data[i];
      if (errors.length > 0 && errors.some(({ row }) => row === i)) throw badQuotes(line, cells.length);
      sink(cells, line, !last || i < data.length - 1);
      line++;
      if (quoted) for (const cell of cells) if (cell.includes('\n')) line += cell.split('\n').length - 1;
    }
    if (last && errors.length > 0) throw badQuotes(line, 1);
    rest = last ? '' : text.slice(meta.cursor);
  };

  return {
    push(text) {
      let block = rest + text;
      // whether a last carriage return is half of a line break shows with the next block
      const held = block.endsWith('\r') ? '\r' : '';
      if (held) block = block.slice(0, -1);
      if (block.includes('\r')) block = block.replace(/\r\n?/g, '\n');
      if (block.includes('\n')) split(block, false);
      else rest = block;
      rest += held;
      if (rest.length > LONGEST_ROW) throw badQuotes(line, 1);
    },
    end() {
      if (rest === '') return;
      const whole = rest.endsWith('\r');
      split(rest.replace(/\r\n?/g, '\n'), false);
      if (rest !== '' || !whole) split(rest, true);
    },
  };
}

function badQuotes(line: number, column: number): TintladderError {
  return new TintladderError('malformed', {
    path: cellPlace(line, column),
    received: '"',
    expected: 'a quoted field that ends at a delimiter or a line break',
    hint: 'Double the quotes inside a quoted field.',
  });
}

/** The first rows of a text whose line breaks are `\n`, split by one delimiter; for looking before reading. */
export function firstRows(text: string, delimiter: Delimiter, count: number): string[][] {
  return Papa.parse<string[]>(text, { delimiter, newline: '\n', quoteChar: '"', preview: count }).data;
}
