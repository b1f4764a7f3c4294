import { assertFiniteArray, assertRows, rowsOutput } from '../core/internal.js';
import { labUnchecked } from './cielab.js';
import { assertGrid, type Grid } from './grid.js';
import type { Viewing } from './viewing.js';
import { type WeightingTable, weightingTable } from './weighting.js';
import { weighted } from './xyz-from-spectrum.js';

/**
 * CIELAB of many spectra: what `labFromSpectrum` gives for each, to the bit, without an object for each.
 *
 * The values are taken as they are, unlike those of a checked spectrum: fractions, and any finite number.
 *
 * @param values - reflectance factors as fractions, one spectrum after the other (n x bands)
 * @param grid - first wavelength and step in nm, number of bands
 * @param viewing - illuminant and observer
 * @param out - where L*, a*, b* go, one after the other (n x 3)
 * @default out a new array
 * @returns `out`
 * @throws TintladderError `empty`, `not-a-multiple` and `wrong-length` for the arrays; `grid-invalid`,
 * `unknown-illuminant`, `unknown-observer`, `illuminant-range`; `not-finite` naming the index
 * @example
 * const values = Float64Array.of(0.5, 0.5, 0.5, 1, 1, 1);
 * labRows(values, { start: 400, step: 20, count: 3 }, D65_10)[3] // 100
 * @see CIE 015:2018, 7.1; ISO/CIE 11664-4
 */
export function labRows(values: Float64Array, grid: Grid, viewing: Viewing, out?: Float64Array): Float64Array {
  assertGrid(grid);
  const rows = assertRows(values, grid.count, 'values');
  const labs = rowsOutput(out, 3 * rows);
  if (!convertRows(values, rows, weightingTable(viewing, grid), labs)) {
    assertFiniteArray(values, 'values');
    assertFiniteArray(labs, 'labs');
  }
  return labs;
}

/** The hot loop by itself, small enough for its calls to be inlined. Tells whether every result is finite. */
function convertRows(values: Float64Array, rows: number, table: WeightingTable, labs: Float64Array): boolean {
  const { white } = table;
  const bands = table.x.length;
  let sound = true;
  for (let row = 0; row < rows; row++) {
    const { L, a, b } = labUnchecked(weighted(values, bands * row, table), white);
    labs[3 * row] = L;
    labs[3 * row + 1] = a;
    labs[3 * row + 2] = b;
    const sum = L + a + b;
    sound &&= sum - sum === 0;
  }
  return sound;
}
