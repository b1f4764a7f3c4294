import { TintladderError } from '../core/index.js';

/** An even wavelength grid: `count` readings from `start`, `interval` apart; both in nm. */
export interface Grid {
  readonly start: number;
  readonly interval: number;
  readonly count: number;
}

/** The range in nm over which the CIE observers are tabulated. */
export const SHORTEST_WAVELENGTH = 360;
export const LONGEST_WAVELENGTH = 830;

/**
 * Refuses a grid that the weighting tables can't serve: fewer than two readings, an interval outside 1-20 nm, or
 * readings outside 360-830 nm.
 */
export function assertGrid({ start, interval, count }: Grid): void {
  const bad = (place: string, seen: number, expected: string, mend?: string) =>
    new TintladderError('grid-invalid', { place, seen, expected, mend });
  if (!Number.isInteger(count) || count < 2) throw bad('grid.count', count, 'a count of two or more');
  if (!(interval >= 1 && interval <= 20)) throw bad('grid.interval', interval, 'an interval from 1 to 20 nm');
  if (!(start >= SHORTEST_WAVELENGTH)) {
    throw bad('grid.start', start, 'a wavelength of 360 nm or more', 'Leave out the readings below 360 nm.');
  }
  const end = start + (count - 1) * interval;
  // Intervals such as 10/3 nm add up with rounding; a millionth of a nanometre is far below any instrument's scale.
  if (!(end <= LONGEST_WAVELENGTH + 1e-6)) {
    throw bad('grid.end', end, 'a wavelength of 830 nm or less', 'Leave out the readings above 830 nm.');
  }
}

/** One text for each grid, for caches and messages: `400-700/10 nm`. */
export function describeGrid({ start, interval, count }: Grid): string {
  return `${start}-${start + (count - 1) * interval}/${interval} nm`;
}
