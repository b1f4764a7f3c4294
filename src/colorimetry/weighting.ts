import { TintladderError } from '../errors.js';
import { assertGrid, describeGrid, type Grid, SHORTEST_WAVELENGTH } from './grid.js';
import { summedPower } from './illuminant.js';
import { spreadLagrange } from './lagrange.js';
import { colourMatchingFunctions } from './observer.js';
import type { Illuminant, Viewing } from './viewing.js';

/** One weight for each of X, Y and Z at evenly spaced wavelengths (nm), and their sums: the white point. */
export interface WeightingTable {
  readonly start: number;
  readonly interval: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly white: { readonly X: number; readonly Y: number; readonly Z: number };
}

const named = new Map<string, WeightingTable>();
const own = new WeakMap<Illuminant, Map<string, WeightingTable>>();

/**
 * The weighting table for an illuminant, an observer and a wavelength grid; built once, then kept.
 *
 * Between readings the reflectance is interpolated to the summation step (cubic Lagrange inside, quadratic in the
 * first and last interval); beyond the readings the missing weights go to the first and last of them. Readings more than 10 nm
 * apart are first interpolated halfway. Every reading's share adds up to one, so the white is the same on every grid.
 *
 * @throws TintladderError `grid-invalid`, `unknown-illuminant`, `unknown-observer`; `illuminant-range` if a caller's
 * illuminant doesn't cover the readings
 * @see ASTM E2022 for the weights, ASTM E308 7.2 and 7.3 for wide steps and short ranges
 */
export function weightingTable(viewing: Viewing, grid: Grid): WeightingTable {
  return kept(viewing, `${grid.start} ${grid.interval} ${grid.count}`, () => {
    assertGrid(grid);
    if (typeof viewing.illuminant === 'object') assertCovers(viewing.illuminant, grid);
    const full = summationWeights(viewing);
    const shares = (weights: Float64Array) => {
      const shared = new Float64Array(grid.count);
      weights.forEach((weight, i) => {
        share(weight, (full.start + i * full.interval - grid.start) / grid.interval, grid, shared);
      });
      return shared;
    };
    const { start, interval } = grid;
    return { start, interval, x: shares(full.x), y: shares(full.y), z: shares(full.z), white: full.white };
  });
}

/**
 * Illuminant times observer at every wavelength at which CIE sums them, scaled to Y = 100.
 *
 * @throws TintladderError `unknown-illuminant`, `unknown-observer`
 * @see CIE 015:2018, 7.1
 */
export function summationWeights(viewing: Viewing): WeightingTable {
  return kept(viewing, '', () => {
    const cmf = colourMatchingFunctions(viewing.observer);
    const { start, interval, values } = summedPower(viewing.illuminant);
    const product = (matching: Float64Array) =>
      values.map((power, i) => power * matching[start + i * interval - SHORTEST_WAVELENGTH]);
    const sum = (weights: Float64Array) => weights.reduce((total, weight) => total + weight, 0);
    const [x, y, z] = [product(cmf.x), product(cmf.y), product(cmf.z)];
    const k = 100 / sum(y);
    const white = Object.freeze({ X: k * sum(x), Y: 100, Z: k * sum(z) });
    return { start, interval, x: x.map((w) => k * w), y: y.map((w) => k * w), z: z.map((w) => k * w), white };
  });
}

function kept({ illuminant, observer }: Viewing, key: string, build: () => WeightingTable): WeightingTable {
  let tables = named;
  if (typeof illuminant === 'object') {
    tables = own.get(illuminant) ?? new Map();
    own.set(illuminant, tables);
  }
  const full = `${typeof illuminant === 'string' ? illuminant : ''} ${observer} ${key}`;
  const known = tables.get(full);
  if (known) return known;
  const table = build();
  tables.set(full, table);
  return table;
}

/** Gives the weight at `position` (in steps from the first reading) to the readings it would be interpolated from. */
function share(weight: number, position: number, { interval, count }: Grid, weights: Float64Array): void {
  if (interval > 10) {
    const halves = new Float64Array(2 * count - 1);
    spreadLagrange(weight, 2 * position, halves);
    halves.forEach((half, i) => {
      if (half !== 0) spreadLagrange(half, i / 2, weights);
    });
  } else spreadLagrange(weight, position, weights);
}

function assertCovers(illuminant: Illuminant, grid: Grid): void {
  const end = illuminant.start + (illuminant.values.length - 1) * illuminant.interval;
  if (illuminant.start <= grid.start && end >= grid.start + (grid.count - 1) * grid.interval) return;
  throw new TintladderError('illuminant-range', {
    place: `illuminant ${illuminant.name}`,
    seen: `${illuminant.start}-${end} nm`,
    expected: `power over the whole range of the readings, ${describeGrid(grid)},`,
  });
}
