import type { BandWeights } from '../wavelength/resampling.js';

/** First and last filled band of a row, by their index in the order of wavelength; `undefined` where none is filled. */
export function bandsOf(
  cells: readonly string[],
  columns: Int32Array,
): { readonly from: number; readonly to: number } | undefined {
  const isEmpty = (i: number) => {
    const cell = cells[columns[i]];
    // most cells hold more than one character and begin with a digit
    return cell.length === 0 || (cell.charCodeAt(0) <= 0x20 && cell.trim() === '') || EMPTY.has(cell);
  };
  let from = 0;
  let to = columns.length - 1;
  while (from <= to && isEmpty(from)) from++;
  while (to > from && isEmpty(to)) to--;
  return from <= to ? { from, to } : undefined;
}

/** How files write that there is no reading. */
const EMPTY = new Set(['-', '--', '---', '—', '–', 'n/a', 'N/A', '#N/A', 'NaN']);

/** Readings of a new grid as weighted sums of those that were read. */
export function sumBands(values: Float64Array, resampling: readonly BandWeights[]): Float64Array {
  return Float64Array.from(resampling, ({ first, weights }) => {
    let sum = 0;
    for (let i = 0; i < weights.length; i++) sum += weights[i] * values[first + i];
    return sum;
  });
}
