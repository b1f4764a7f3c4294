import { TintladderError } from '../core/index.js';
import { refineBySpline, spreadLagrange } from '../numeric/internal.js';
import { assertGrid, describeGrid, type Grid, SHORTEST_WAVELENGTH } from './grid.js';
import { summedPower } from './illuminant.js';
import { assertObserver, colourMatchingFunctions } from './observer.js';
import type { Illuminant, Viewing } from './viewing.js';

/** One weight for each of X, Y and Z at evenly spaced wavelengths (nm), and their sums: the white point. */
export interface WeightingTable {
  readonly start: number;
  readonly step: number;
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
 * first and last step); beyond the readings the missing weights go to the first and last of them. Readings more than 10 nm
 * apart are first interpolated halfway, by a natural cubic spline: over such distances the local cubic misses absorption edges by
 * several hundredths of a ΔE. Every reading's share adds up to one, so the white is the same on every grid.
 *
 * @throws TintladderError `grid-invalid`, `unknown-illuminant`, `unknown-observer`; `illuminant-range` if a caller's
 * illuminant doesn't cover the readings
 * @see ASTM E2022 for the weights, ASTM E308 7.2 and 7.3 for wide steps and short ranges
 */
export function weightingTable(viewing: Viewing, grid: Grid): WeightingTable {
  return kept(viewing, `${grid.start} ${grid.step} ${grid.count}`, () => {
    assertGrid(grid);
    const full = summationWeights(viewing);
    if (typeof viewing.illuminant === 'object') assertCovers(viewing.illuminant, grid);
    const { start, step, count } = grid;
    if (step > 10) {
      const halved = weightingTable(viewing, { start, step: step / 2, count: 2 * count - 1 });
      const [x, y, z] = gatherHalves([halved.x, halved.y, halved.z], count);
      return { start, step, x, y, z, white: full.white };
    }
    const shares = (weights: Float64Array) => {
      const shared = new Float64Array(count);
      weights.forEach((weight, i) => {
        spreadLagrange(weight, (full.start + i * full.step - start) / step, shared);
      });
      return shared;
    };
    return { start, step, x: shares(full.x), y: shares(full.y), z: shares(full.z), white: full.white };
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
    const { start, step, values } = summedPower(viewing.illuminant);
    const product = (matching: Float64Array) =>
      values.map((power, i) => power * matching[start + i * step - SHORTEST_WAVELENGTH]);
    const sum = (weights: Float64Array) => weights.reduce((total, weight) => total + weight, 0);
    const [x, y, z] = [product(cmf.x), product(cmf.y), product(cmf.z)];
    const k = 100 / sum(y);
    const white = Object.freeze({ X: k * sum(x), Y: 100, Z: k * sum(z) });
    return { start, step, x: x.map((w) => k * w), y: y.map((w) => k * w), z: z.map((w) => k * w), white };
  });
}

function kept({ illuminant, observer }: Viewing, key: string, build: () => WeightingTable): WeightingTable {
  // Before the look-up: as part of a key, 10 would pass for '10'.
  assertObserver(observer);
  let tables = named;
  if (typeof illuminant === 'object' && illuminant !== null) {
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

/** Gives the weights of readings at half the step to the readings, each in its share of the spline through them. */
function gatherHalves(weights: readonly Float64Array[], count: number): Float64Array[] {
  const shares = Array.from({ length: count }, (_, i) => {
    const unit = new Float64Array(count);
    unit[i] = 1;
    return refineBySpline(unit, 2);
  });
  return weights.map((half) =>
    Float64Array.from(shares, (share) => share.reduce((sum, value, j) => sum + value * half[j], 0)),
  );
}

function assertCovers(illuminant: Illuminant, grid: Grid): void {
  const end = illuminant.start + (illuminant.values.length - 1) * illuminant.step;
  if (illuminant.start <= grid.start && end >= grid.start + (grid.count - 1) * grid.step) return;
  throw new TintladderError('illuminant-range', {
    path: `illuminant ${illuminant.name}`,
    received: { start: illuminant.start, end },
    expected: `power over the whole range of the readings, ${describeGrid(grid)}`,
  });
}
