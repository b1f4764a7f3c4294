import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';

/** An evenly spaced wavelength grid: `count` readings from `start`, `step` apart; both in nm. */
export interface Grid {
  readonly start: number;
  readonly step: number;
  readonly count: number;
}

/** The range in nm over which the CIE observers are tabulated. */
export const SHORTEST_WAVELENGTH = 360;
export const LONGEST_WAVELENGTH = 830;

/**
 * Refuses a grid that the weighting tables can't serve: fewer than two readings, a step outside 1-20 nm, or
 * readings outside 360-830 nm.
 */
export function assertGrid(grid: Grid): void {
  assertObject(grid, 'grid', 'a grid with start, step and count');
  const { start, step, count } = grid;
  const bad = (path: string, received: number, expected: string, hint?: string) =>
    new TintladderError('grid-invalid', { path, received, expected, hint });
  if (!Number.isInteger(count) || count < 2) throw bad('grid.count', count, 'at least two readings');
  if (!(Number.isFinite(step) && step >= 1 && step <= 20)) throw bad('grid.step', step, 'a step from 1 to 20 nm');
  if (!(Number.isFinite(start) && start >= SHORTEST_WAVELENGTH)) {
    throw bad('grid.start', start, 'a wavelength of 360 nm or more', 'Leave out the readings below 360 nm.');
  }
  const end = start + (count - 1) * step;
  // Intervals such as 10/3 nm add up with rounding; a millionth of a nanometre is far below any instrument's scale.
  if (!(end <= LONGEST_WAVELENGTH + 1e-6)) {
    throw bad('grid.end', end, 'a wavelength of 830 nm or less', 'Leave out the readings above 830 nm.');
  }
}

/** One text for each grid, for caches and messages: `400-700/10 nm`. */
export function describeGrid({ start, step, count }: Grid): string {
  return `${start}-${start + (count - 1) * step}/${step} nm`;
}
