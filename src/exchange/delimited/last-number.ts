import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';
import type { Notes } from '../text/notes.js';

/** Fewer numbers than this say nothing of the decimals a file prints. */
const ENOUGH_NUMBERS = 20;
/** A whole number that is cut from a longer one differs from its neighbour by more, unless only its decimals are gone. */
const LIKELY_CHANGE = 0.2;

function decimalsOf(cell: string): number | undefined {
  return /^\s*[+-]?\d*[.,](\d*)$/.exec(cell)?.[1].length ?? (/^\s*[+-]?\d+$/.test(cell) ? 0 : undefined);
}

/**
 * Looks at the last number of a file whose last line has no end: where all numbers before it have one count of decimals and it has fewer, it is cut,
 * and the file is refused. A whole number close to its neighbour may be printed so, or have lost its decimals; that is noted.
 *
 * @throws TintladderError `truncated`
 */
export function checkLastNumber(cells: readonly string[], before: readonly string[], line: number, notes: Notes): void {
  const cell = cells[cells.length - 1];
  const last = decimalsOf(cell);
  if (last === undefined) return;
  const counts = [...before, ...cells.slice(0, -1)]
    .flatMap((other) => decimalsOf(other) ?? [])
    .filter((count) => count > 0);
  if (counts.length < ENOUGH_NUMBERS || new Set(counts).size > 1 || counts[0] <= last) return;
  const path = cellPlace(line, cells.length);
  const number = (text: string | undefined) => Number((text ?? '').replace(',', '.'));
  const neighbour = number(cells[cells.length - 2]);
  if (last === 0 && !/[.,]/.test(cell) && Math.abs(number(cell) - neighbour) <= LIKELY_CHANGE * Math.abs(neighbour)) {
    const message =
      'The last line has no end and its last number fewer decimals than the others; the file may be cut off there.';
    notes.add('perhaps-cut-off', message, path);
    return;
  }
  throw new TintladderError('truncated', {
    path,
    received: cell,
    expected: 'a number with as many decimals as the others, or a line break',
    hint: 'The file seems to be cut off; if it is whole, end its last line with a line break.',
  });
}
