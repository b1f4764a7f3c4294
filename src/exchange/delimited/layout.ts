import { TintladderError } from '../../core/index.js';
import { columnRole } from '../table/column-role.js';
import { cellPlace } from '../text/cell-place.js';
import { looksNumeric } from '../text/file-number.js';
import { parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { headingStrength, isNameHeading, isWavelengthHeading, parseQuantity } from './headings.js';
import { type Delimiter, firstRows } from './rows.js';

/** How the readings lie in a delimited file. */
export interface Layout {
  /** `wide`: one row per sample; `transposed`: one row per wavelength; `long`: one row per sample and wavelength. */
  readonly kind: 'wide' | 'transposed' | 'long';
  readonly delimiter: Delimiter;
  /** Number of the row (not the line) that the table starts with, from 0; for a transposed table without names its first row. */
  readonly headingRow: number;
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
  let best: { layout: Layout; strength: number } | undefined;
  for (const delimiter of DELIMITERS) {
    if (!text.includes(delimiter)) continue;
    const rows = firstRows(text, delimiter, LOOKED_AT);
    const found = findWide(rows, delimiter) ?? findLong(rows, delimiter) ?? findTransposed(rows, delimiter);
    if (found && (!best || found.strength > best.strength)) best = found;
  }
  if (best) return best.layout;
  const lines = text.split('\n');
  const line = lines.findIndex((candidate) => candidate.trim() !== '');
  throw new TintladderError('no-header', {
    path: cellPlace(line + 1, 1),
    received: lines[line],
    expected: 'a heading with wavelengths, or with L*, a*, b* or X, Y, Z',
    hint: 'Give each column of readings its wavelength, such as 400 nm.',
  });
}

type Found = { layout: Layout; strength: number } | undefined;

function findWide(rows: readonly string[][], delimiter: Delimiter): Found {
  const strengths = rows.map(headingStrength);
  const strongest = Math.max(0, ...strengths);
  if (strongest === 0) return undefined;
  // a preamble may hold a pair of numbers that look like wavelengths; the first of several blocks need not be the largest
  const likely = strengths.findIndex((strength, i) => strength >= 3 && hasReadingsBelow(rows, i));
  const headingRow = likely >= 0 ? likely : strengths.findIndex((strength) => strength >= strongest / 2);
  return { layout: { kind: 'wide', delimiter, headingRow }, strength: strongest };
}

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

function findLong(rows: readonly string[][], delimiter: Delimiter): Found {
  for (let row = 0; row < rows.length - 1; row++) {
    const cells = rows[row];
    const wavelength = cells.findIndex(isWavelengthHeading);
    const name = cells.findIndex(isNameHeading);
    if (wavelength < 0 || (name < 0 && wavelength === 0)) continue;
    const value = cells.findIndex((cell, i) => i !== wavelength && i !== name && parseQuantity(cell) !== undefined);
    const next = rows[row + 1];
    const named = name >= 0 && next.length === cells.length && !looksNumeric(next[name]);
    if (value < 0 && !named) continue;
    const strength = rows.filter((data) => data.length === cells.length && looksNumeric(data[wavelength])).length;
    if (strength > 0) return { layout: { kind: 'long', delimiter, headingRow: row }, strength };
  }
  return undefined;
}

function findTransposed(rows: readonly string[][], delimiter: Delimiter): Found {
  const isReading = (cells: readonly string[]) =>
    cells.length > 1 && parseWavelengthLabel(cells[0]) !== undefined && looksNumeric(cells[1]);
  const first = rows.findIndex(isReading);
  if (first < 0) return undefined;
  const strength = rows.filter(isReading).length;
  if (strength < 2 && !isWavelengthHeading(rows[first - 1]?.[0] ?? '')) return undefined;
  let headingRow = first;
  while (
    headingRow > 0 &&
    rows[headingRow - 1].length >= rows[first].length &&
    rows[headingRow - 1].some((cell) => cell.trim() !== '')
  ) {
    headingRow--;
  }
  return { layout: { kind: 'transposed', delimiter, headingRow }, strength };
}
