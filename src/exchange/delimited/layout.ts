import { TintladderError } from '../../core/index.js';
import { columnRole } from '../table/column-role.js';
import { cellPlace } from '../text/cell-place.js';
import { looksNumeric } from '../text/file-number.js';
import { isWavelength, parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { headingStrength, isNameHeading, isWavelengthHeading, parseValueHeading } from './headings.js';
import { type Delimiter, firstRows } from './rows.js';

/** How the readings lie in a delimited file. */
export interface Layout {
  /** `wide`: one row per sample; `transposed`: one row per wavelength; `long`: one row per sample and wavelength. */
  readonly kind: 'wide' | 'transposed' | 'long';
  readonly delimiter: Delimiter;
  /** Number of the row (not the line) that the table starts with, from 0; for a transposed table without names its first row. */
  readonly headingRow: number;
  /** Some rows of data below a heading, to see what its columns hold. */
  readonly rows: readonly (readonly string[])[];
  /** Runs of blanks separate the cells, to be read as tabs. */
  readonly blanks: boolean;
}

const LOOKED_AT = 200;
/** A reflectance in percent reaches 200, a wavelength starts at 200: this tells a heading from readings. */
export const LARGEST_READING = 200;
const DELIMITERS: readonly Delimiter[] = [';', '\t', ','];

/**
 * Finds delimiter and layout from the beginning of a file.
 *
 * @param text - the beginning, with line breaks as `\n`
 * @throws TintladderError `no-header` when there are neither wavelengths nor colour coordinates
 */
export function findLayout(text: string): Layout {
  let best: Found;
  for (const delimiter of DELIMITERS) {
    if (!text.includes(delimiter)) continue;
    const rows = firstRows(text, delimiter, LOOKED_AT);
    const found = findWide(rows) ?? findLong(rows) ?? findTransposed(rows);
    if (found && (!best || found.strength > best.strength)) best = { ...found, delimiter, rows };
  }
  best ??= findBlankSeparated(text);
  if (best?.delimiter) {
    const { kind, delimiter, headingRow, rows = [] } = best;
    return { kind, delimiter, headingRow, rows: rows.slice(headingRow + 1), blanks: best.blanks === true };
  }
  const lines = text.split('\n');
  const line = lines.findIndex((candidate) => candidate.trim() !== '');
  throw new TintladderError('no-header', {
    path: cellPlace(line + 1, 1),
    received: lines[line],
    expected: 'a heading with wavelengths, or with L*, a*, b* or X, Y, Z',
    hint: 'Give each column of readings its wavelength, such as 400 nm.',
  });
}

type Found =
  | {
      readonly kind: Layout['kind'];
      readonly headingRow: number;
      readonly strength: number;
      readonly delimiter?: Delimiter;
      readonly rows?: Layout['rows'];
      readonly blanks?: boolean;
    }
  | undefined;

/** Readings in columns that nothing but blanks separates: only rows of wavelengths, since names may hold blanks. */
function findBlankSeparated(text: string): Found {
  const rows = firstRows(blanksAsTabs(text), '\t', LOOKED_AT);
  const found = findTransposed(rows);
  return found && found.strength >= 3 ? { ...found, delimiter: '\t', rows, blanks: true } : undefined;
}

/** Runs of blanks as tabs, none at the ends of a line; lines that are `key: value` stay as they are. */
export function blanksAsTabs(text: string): string {
  return text
    .split('\n')
    .map((line) => (/[:=]/.test(line) ? line : line.trim().replace(/[ \u00a0]+/g, '\t')))
    .join('\n');
}

function findWide(rows: readonly string[][]): Found {
  const strengths = rows.map(headingStrength);
  const strongest = Math.max(0, ...strengths);
  if (strongest === 0) return undefined;
  // a preamble may hold a pair of numbers that look like wavelengths; the first of several blocks need not be the largest
  const likely = strengths.findIndex(
    (strength, i) => (strength >= 3 || (strength === 2 && isNamed(rows[i]))) && hasReadingsBelow(rows, i),
  );
  const headingRow = likely >= 0 ? likely : strengths.findIndex((strength) => strength >= strongest / 2);
  // a delimiter that only cuts texts apart has no readings in its columns
  return {
    kind: 'wide',
    headingRow,
    strength: likely >= 0 || hasReadingsBelow(rows, headingRow) ? strongest : strongest / 2,
  };
}

const isNamed = (cells: readonly string[]) => cells.some((cell) => columnRole(cell).kind === 'name');

/** Whether one of the next rows holds a reading under each wavelength or coordinate of a heading. */
function hasReadingsBelow(rows: readonly string[][], heading: number): boolean {
  const columns = rows[heading].flatMap((cell, i) =>
    ['wavelength', 'coordinate'].includes(columnRole(cell).kind) ? [i] : [],
  );
  const below = rows.slice(heading + 1).filter((cells) => cells.some((cell) => cell.trim() !== ''));
  return below
    .slice(0, 3)
    .some((cells) =>
      columns.every(
        (column) => looksNumeric(cells[column] ?? '') && Number.parseFloat(cells[column]) <= LARGEST_READING,
      ),
    );
}

/** Whether a cell lists a wavelength below a heading of wavelengths. */
function isListed(cell: string | undefined): boolean {
  return (
    cell !== undefined && (parseWavelengthLabel(cell) !== undefined || isWavelength(Number(cell.replace(',', '.'))))
  );
}

function findLong(rows: readonly string[][]): Found {
  for (let row = 0; row < rows.length - 1; row++) {
    const cells = rows[row];
    const wavelength = cells.findIndex(isWavelengthHeading);
    if (wavelength < 0) continue;
    const kinds = cells.map((cell, i) => (i === wavelength ? 'wavelength' : columnRole(cell).kind));
    const tells = kinds.some(
      (kind) => kind === 'name' || kind === 'replicate' || kind === 'condition' || kind === 'kind',
    );
    if (!tells && wavelength === 0) continue;
    const value = cells.findIndex(
      (cell, i) => kinds[i] !== 'wavelength' && kinds[i] !== 'name' && parseValueHeading(cell),
    );
    const name = cells.findIndex(isNameHeading);
    const next = rows[row + 1];
    const named = name >= 0 && next.length === cells.length && !looksNumeric(next[name]);
    if (value < 0 && !named) continue;
    const strength = rows.filter((data) => data.length === cells.length && isListed(data[wavelength])).length;
    if (strength > 0) return { kind: 'long', headingRow: row, strength };
  }
  return undefined;
}

function findTransposed(rows: readonly string[][]): Found {
  const isReading = (cells: readonly string[]) =>
    cells.length > 1 && isListed(cells[0]) && cells.slice(1).some((cell) => looksNumeric(cell));
  const first = rows.findIndex(isReading);
  if (first < 0) return undefined;
  const strength = rows.filter(isReading).length;
  if (strength < 2 && !isWavelengthHeading(rows[first - 1]?.[0] ?? '')) return undefined;
  let headingRow = first;
  const width = rows[first].length;
  while (headingRow > 0 && belongsAbove(rows[headingRow - 1], width)) headingRow--;
  return { kind: 'transposed', headingRow, strength };
}

/** Whether a row above the readings is part of the table: as wide, not blank, and no `key: value` line. */
function belongsAbove(cells: readonly string[], width: number): boolean {
  if (cells.length < width || cells.every((cell) => cell.trim() === '')) return false;
  return !/^\s*(?:#|[^:=]{1,60}[:=]\s*\S)/.test(cells[0]);
}
