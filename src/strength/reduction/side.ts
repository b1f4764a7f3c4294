import type { Surface } from '../../kubelka-munk/index.js';
import { meanRow } from '../../numeric/internal.js';
import type { Bands } from './bands.js';
import { absorptionOf } from './colorant-absorption.js';

/** One side of a comparison: its readings in bands, and their mean. */
export interface Side {
  /** As messages call it: `reference`, `trial`, `white`. */
  readonly name: string;
  readonly readings: readonly Float64Array[];
  readonly mean: Float64Array;
}

/** A side from the reflectances of its readings. */
export function sideOf(name: string, readings: readonly Float64Array[]): Side {
  return { name, readings, mean: meanRow(readings) };
}

/** K/S of the mean of a side and of each of its readings. */
export function absorptionsOf(side: Side, surface: Surface | undefined, bands: Bands) {
  const placed = (index: number) => (side.readings.length === 1 ? side.name : `${side.name}[${index}]`);
  const each = side.readings.map((reading, index) => absorptionOf(reading, surface, bands, placed(index)));
  return { each, mean: absorptionOf(side.mean, surface, bands, side.name) };
}
