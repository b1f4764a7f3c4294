import { assertFiniteArray, assertRows, rowsOutput } from '../core/internal.js';
import { labUnchecked } from './cielab.js';
import { assertGrid, type Grid } from './grid.js';
import type { Viewing } from './viewing.js';
import { type WeightingTable, weightingTable } from './weighting.js';
import { weighted, type Xyz } from './xyz-from-spectrum.js';

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

/** Rows that are summed side by side: the additions of one row wait for each other, those of several fill the gaps. */
const TOGETHER = 4;

/** The hot loop by itself. Each sum is taken in the order of the single form, so that both agree to the bit. Tells whether all is finite. */
function convertRows(values: Float64Array, rows: number, table: WeightingTable, labs: Float64Array): boolean {
  const { x, y, z, white } = table;
  const bands = x.length;
  const together = rows - (rows % TOGETHER);
  let sound = true;
  for (let row = 0; row < together; row += TOGETHER) {
    const p = bands * row;
    const q = p + bands;
    const r = q + bands;
    const s = r + bands;
    let Xp = 0;
    let Yp = 0;
    let Zp = 0;
    let Xq = 0;
    let Yq = 0;
    let Zq = 0;
    let Xr = 0;
    let Yr = 0;
    let Zr = 0;
    let Xs = 0;
    let Ys = 0;
    let Zs = 0;
    for (let i = 0; i < bands; i++) {
      const wx = x[i];
      const wy = y[i];
      const wz = z[i];
      const vp = values[p + i];
      const vq = values[q + i];
      const vr = values[r + i];
      const vs = values[s + i];
      Xp += wx * vp;
      Yp += wy * vp;
      Zp += wz * vp;
      Xq += wx * vq;
      Yq += wy * vq;
      Zq += wz * vq;
      Xr += wx * vr;
      Yr += wy * vr;
      Zr += wz * vr;
      Xs += wx * vs;
      Ys += wy * vs;
      Zs += wz * vs;
    }
    const k = 3 * row;
    const soundP = store(labs, k, { X: Xp, Y: Yp, Z: Zp }, white);
    const soundQ = store(labs, k + 3, { X: Xq, Y: Yq, Z: Zq }, white);
    const soundR = store(labs, k + 6, { X: Xr, Y: Yr, Z: Zr }, white);
    const soundS = store(labs, k + 9, { X: Xs, Y: Ys, Z: Zs }, white);
    sound = sound && soundP && soundQ && soundR && soundS;
  }
  for (let row = together; row < rows; row++) {
    if (!store(labs, 3 * row, weighted(values, bands * row, table), white)) sound = false;
  }
  return sound;
}

/** Writes one colour; tells whether it is finite. */
function store(labs: Float64Array, at: number, xyz: Xyz, white: Xyz): boolean {
  const { L, a, b } = labUnchecked(xyz, white);
  labs[at] = L;
  labs[at + 1] = a;
  labs[at + 2] = b;
  const sum = L + a + b;
  return sum - sum === 0;
}
