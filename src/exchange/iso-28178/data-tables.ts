import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';
import { type TokenLine, tokenLines } from './tokens.js';

/** One `BEGIN_DATA` ... `END_DATA` with the keywords before it. */
export interface DataTable {
  /** Field names. */
  readonly fields: readonly string[];
  /** Line of `BEGIN_DATA_FORMAT`. */
  readonly line: number;
  readonly rows: readonly { readonly cells: readonly string[]; readonly line: number }[];
  /** Keywords in force, upper case; a keyword given several times keeps all its values. */
  readonly keywords: ReadonlyMap<string, readonly string[]>;
}

interface Open {
  readonly kind: 'format' | 'data';
  readonly line: number;
  readonly lines: TokenLine[];
}

/**
 * Data tables of keyword text.
 *
 * @throws TintladderError `truncated` for a block that does not end; `no-header` for data without a format; `count-mismatch` where a stated
 * number of fields or sets is not met; `row-length`
 */
export function readDataTables(text: string): DataTable[] {
  const tables: DataTable[] = [];
  const keywords = new Map<string, string[]>();
  let format: { fields: string[]; line: number } | undefined;
  let open: Open | undefined;
  for (const current of tokenLines(text)) {
    const [first, ...rest] = current.tokens;
    const word = first.toUpperCase();
    if (open) {
      const ends = open.kind === 'format' ? 'END_DATA_FORMAT' : 'END_DATA';
      if (word === ends) {
        if (open.kind === 'format') format = readFormat(open, keywords);
        else tables.push(readTable(open, format, keywords));
        open = undefined;
      } else if (/^(BEGIN|END)_DATA(_FORMAT)?$/.test(word)) throw blockFault(current, word, ends);
      else open.lines.push(current);
    } else if (word === 'BEGIN_DATA_FORMAT') open = { kind: 'format', line: current.line, lines: [] };
    else if (word === 'BEGIN_DATA') open = { kind: 'data', line: current.line, lines: [] };
    else if (word === 'END_DATA' || word === 'END_DATA_FORMAT') throw blockFault(current, word, 'a keyword');
    else if (rest.length > 0) {
      // counts belong to the table that follows; conditions add up
      const counts = /^(NUMBER_OF_|SPECTRAL_)/.test(word);
      keywords.set(word, counts ? [rest.join(' ')] : [...(keywords.get(word) ?? []), rest.join(' ')]);
    } else keywords.set(word, keywords.get(word) ?? []);
  }
  if (open) {
    throw new TintladderError('truncated', {
      path: cellPlace(open.lines.at(-1)?.line ?? open.line, 1),
      received: '',
      expected: open.kind === 'format' ? 'END_DATA_FORMAT' : 'END_DATA',
      hint: 'The file is cut off; export it again.',
    });
  }
  return tables;
}

function blockFault({ line }: TokenLine, received: string, expected: string): TintladderError {
  return new TintladderError('malformed', { path: cellPlace(line, 1), received, expected });
}

function readFormat(
  { lines, line }: Open,
  keywords: ReadonlyMap<string, readonly string[]>,
): { fields: string[]; line: number } {
  const fields = lines.flatMap(({ tokens }) => tokens);
  expectCount('NUMBER_OF_FIELDS', fields.length, 'field names', line, keywords);
  return { fields, line };
}

function readTable(
  { lines, line }: Open,
  format: { fields: string[]; line: number } | undefined,
  keywords: Map<string, string[]>,
): DataTable {
  if (!format || format.fields.length === 0) {
    throw new TintladderError('no-header', {
      path: cellPlace(line, 1),
      received: 'BEGIN_DATA',
      expected: 'BEGIN_DATA_FORMAT before it',
    });
  }
  const { fields } = format;
  const rows =
    wrapped(lines, fields.length, keywords) ??
    lines.map((current) => ({ cells: rowCells(current, fields.length), line: current.line }));
  expectCount('NUMBER_OF_FIELDS', fields.length, 'field names', format.line, keywords);
  expectCount('NUMBER_OF_SETS', rows.length, 'rows', line, keywords);
  return {
    fields,
    line: format.line,
    rows,
    keywords: new Map([...keywords].map(([word, values]) => [word, [...values]])),
  };
}

/** Cells of one row: its tokens, or its tab-separated parts where names hold blanks. */
function rowCells({ tokens, text, line }: TokenLine, width: number): readonly string[] {
  if (tokens.length === width) return tokens;
  const parts = text.replace(/\t+\s*$/, '').split('\t');
  if (parts.length === width) return parts.map((part) => part.trim().replace(/^"([^"]*)"$/, '$1'));
  throw new TintladderError('row-length', {
    path: cellPlace(line, Math.min(tokens.length, width) + 1),
    received: tokens.length,
    expected: `${width} values, as in the data format`,
  });
}

/** Rows that run over several lines: only where the stated number of sets proves that no value is missing. */
function wrapped(
  lines: readonly TokenLine[],
  width: number,
  keywords: ReadonlyMap<string, readonly string[]>,
): DataTable['rows'] | undefined {
  const sets = Number(keywords.get('NUMBER_OF_SETS')?.[0]);
  const total = lines.reduce((sum, { tokens }) => sum + tokens.length, 0);
  if (!(sets > 0) || total !== sets * width || lines.every(({ tokens }) => tokens.length === width)) return undefined;
  if (lines.some(({ tokens }) => tokens.length > width)) return undefined;
  const rows: { cells: string[]; line: number }[] = [];
  for (const { tokens, line } of lines) {
    const row = rows.at(-1);
    if (!row || row.cells.length === width) rows.push({ cells: [...tokens], line });
    else row.cells.push(...tokens);
  }
  return rows.every(({ cells }) => cells.length === width) ? rows : undefined;
}

function expectCount(
  word: string,
  found: number,
  what: string,
  line: number,
  keywords: ReadonlyMap<string, readonly string[]>,
): void {
  const stated = keywords.get(word)?.[0];
  if (stated === undefined || Number(stated) === found) return;
  throw new TintladderError('count-mismatch', {
    path: cellPlace(line, 1),
    received: found,
    expected: `${stated} ${what}, as ${word} says`,
    hint: 'The file may be cut off or edited; export it again.',
  });
}
