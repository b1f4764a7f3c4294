import { TintladderError } from '../core/index.js';
import { refineBySpline, spreadLagrange } from '../numeric/internal.js';
import { assertGrid, describeGrid, type Grid, SHORTEST_WAVELENGTH } from './grid.js';
import type { Illuminant } from './illuminant.js';
import { colourMatchingFunctions } from './observer.js';
import { summedPower } from './summed-power.js';
import { assertViewing, type Viewing } from './viewing.js';
import type { WideStep } from './wide-step.js';

/** One weight for each of X, Y and Z at evenly spaced wavelengths (nm), and their sums: the white point. */
export interface WeightingTable {
  readonly start: number;
  readonly step: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly white: { readonly X: number; readonly Y: number; readonly Z: number };
}

/** Tables kept for the named illuminants, and for each table of a caller's own: a laboratory has a handful of grids and viewings. */
const MOST_KEPT = 100;

const named = new Map<string, WeightingTable>();
const own = new WeakMap<Illuminant, Map<string, WeightingTable>>();

/**
 * The weighting table for an illuminant, an observer and a wavelength grid; built once, then kept until a hundred others were asked for.
 *
 * The table is made for the whole range of 360 to 780 nm first, on the grid that the readings would have there: between readings the
 * reflectance is interpolated to the summation step (cubic Lagrange inside, quadratic in the first and last step), beyond them the end
 * reading counts. Then the weights of wavelengths that were not read are added to the first and last reading that was. Readings more than
 * 10 nm apart are first interpolated halfway. Every reading's share adds up to one, so the white is the same on every grid.
 *
 * @throws TintladderError `grid-invalid`, `unknown-illuminant`, `unknown-observer`; `illuminant-range` if a caller's
 * illuminant doesn't cover the readings
 * @see ASTM E2022 for the weights, ASTM E308 7.2 and 7.3 for wide steps and short ranges
 */
export function weightingTable(viewing: Viewing, grid: Grid, wideStep: WideStep = 'spline'): WeightingTable {
  return kept(viewing, `${grid.start} ${grid.step} ${grid.count} ${wideStep}`, () => {
    assertGrid(grid);
    const full = summationWeights(viewing);
    if (typeof viewing.illuminant === 'object') assertCovers(viewing.illuminant, grid);
    const { start, step, count } = grid;
    if (step > 10 && wideStep === 'spline') {
      const halved = weightingTable(viewing, { start, step: step / 2, count: 2 * count - 1 });
      const of = (weights: Float64Array) => gatherBySpline(weights, count);
      return { start, step, x: of(halved.x), y: of(halved.y), z: of(halved.z), white: full.white };
    }
    const before = missingSteps(start - WHOLE_TABLE.start, step);
    const after = missingSteps(WHOLE_TABLE.end - (start + (count - 1) * step), step);
    const whole = { start: start - before * step, step, count: before + count + after };
    const of = (weights: Float64Array) => {
      return fold(step > 10 ? halvedShares(weights, full, whole) : lagrangeShares(weights, full, whole), before, count);
    };
    return { start, step, x: of(full.x), y: of(full.y), z: of(full.z), white: full.white };
  });
}

/** The range of the tables of ASTM E308, nm. */
const WHOLE_TABLE = { start: 360, end: 780 };

/** How many readings are missing in a length of wavelength; steps such as 10/3 nm add up with rounding. */
function missingSteps(length: number, step: number): number {
  return Math.max(0, Math.floor(length / step + 1e-6));
}

/** Summation weights given to the readings around each of them by Lagrange's coefficients. */
function lagrangeShares(weights: Float64Array, from: { start: number; step: number }, { start, step, count }: Grid) {
  const shares = new Float64Array(count);
  weights.forEach((weight, i) => {
    spreadLagrange(weight, (from.start + i * from.step - start) / step, shares);
  });
  return shares;
}

/** The same at half the step, and the weights halfway between the readings given to the readings by the local cubic. */
function halvedShares(weights: Float64Array, from: { start: number; step: number }, whole: Grid): Float64Array {
  const { start, step, count } = whole;
  const shares = new Float64Array(count);
  lagrangeShares(weights, from, { start, step: step / 2, count: 2 * count - 1 }).forEach((weight, i) => {
    spreadLagrange(weight, i / 2, shares);
  });
  return shares;
}

/** Adds the weights before the first and after the last of `count` readings to these two. */
function fold(weights: Float64Array, before: number, count: number): Float64Array {
  const folded = weights.slice(before, before + count);
  for (let i = 0; i < before; i++) folded[0] += weights[i];
  for (let i = before + count; i < weights.length; i++) folded[count - 1] += weights[i];
  return folded;
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

function kept(viewing: Viewing, key: string, build: () => WeightingTable): WeightingTable {
  // Before the look-up: as part of a key, 10 would pass for '10'.
  assertViewing(viewing, 'viewing');
  const { illuminant, observer } = viewing;
  let tables = named;
  if (typeof illuminant === 'object' && illuminant !== null) {
    tables = own.get(illuminant) ?? new Map();
    own.set(illuminant, tables);
  }
  const full = `${typeof illuminant === 'string' ? illuminant : ''} ${observer} ${key}`;
  const known = tables.get(full);
  if (known) return known;
  const table = build();
  if (tables.size >= MOST_KEPT) tables.delete(tables.keys().next().value ?? '');
  tables.set(full, table);
  return table;
}

/** Gives the weights of readings at half the step to the readings, each in its share of the spline through them. */
function gatherBySpline(halves: Float64Array, count: number): Float64Array {
  const unit = new Float64Array(count);
  return unit.map((_, i) => {
    unit.fill(0);
    unit[i] = 1;
    return refineBySpline(unit, 2).reduce((sum, value, j) => sum + value * halves[j], 0);
  });
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
