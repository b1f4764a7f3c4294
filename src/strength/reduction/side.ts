import type { PlacedReading, ReadRepeated, UnitTree } from '../../evidence/internal.js';
import type { SurfaceCorrection } from '../../kubelka-munk/index.js';
import { meanRow } from '../../numeric/internal.js';
import type { Bands } from './bands.js';
import { absorptionOf } from './colorant-absorption.js';

/** One side of a comparison: its readings in bands as they were repeated, and their mean. */
export interface Side {
  /** As messages call it: `reference`, `trial`, `white`. */
  readonly name: string;
  readonly read: ReadRepeated<Float64Array>;
  /** Every unit counts as much as its neighbours, however often it was read itself. */
  readonly mean: Float64Array;
}

/** A side from its readings, by what they reflect in bands. */
export function sideOf<Reading>(
  name: string,
  read: ReadRepeated<Reading>,
  reflectancesOf: (placed: PlacedReading<Reading>) => Float64Array,
): Side {
  const readings: PlacedReading<Float64Array>[] = [];
  const inBands = (node: UnitTree<Reading>): UnitTree<Float64Array> => {
    if ('units' in node) return { units: node.units.map(inBands) };
    const placed = { ...node, reading: reflectancesOf(node) };
    readings.push(placed);
    return placed;
  };
  const tree = inBands(read.tree);
  return { name, read: { ...read, tree, readings }, mean: unitMean(tree) };
}

function unitMean(tree: UnitTree<Float64Array>): Float64Array {
  return 'units' in tree ? meanRow(tree.units.map(unitMean)) : tree.reading;
}

/** K/S of the mean of a side, and of each of its readings in their order. */
export interface Absorptions {
  readonly each: readonly Float64Array[];
  readonly mean: Float64Array;
}

/** @throws TintladderError what `absorptionOf` throws, with the path of the reading */
export function absorptionsOf({ name, read, mean }: Side, surface: SurfaceCorrection, bands: Bands): Absorptions {
  const each = read.readings.map(({ reading, path }) => absorptionOf(reading, surface, bands, path));
  return { each, mean: absorptionOf(mean, surface, bands, name) };
}
