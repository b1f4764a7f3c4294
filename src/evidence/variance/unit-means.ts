import { mean } from '../../numeric/internal.js';
import { LEVELS, type Level } from '../readings/level.js';
import type { PlacedReading, ReadRepeated, UnitTree } from '../readings/read-repeated.js';

/** A unit with the mean of its parts, each part counting alike however often it was read. */
export interface UnitMean {
  readonly mean: number;
  readonly readings: readonly PlacedReading<number>[];
}

/** Mean of a unit: the mean of the means of its parts, down to the readings. */
export function meanOfTree(tree: UnitTree<number>): number {
  return 'units' in tree ? mean(tree.units.map(meanOfTree)) : tree.reading;
}

/** Every reading of a unit. */
export function readingsOf<Reading>(tree: UnitTree<Reading>): PlacedReading<Reading>[] {
  return 'units' in tree ? tree.units.flatMap(readingsOf) : [tree];
}

/** The units at a depth of the tree, grouped by the unit they are parts of. */
export function unitsAt<Reading>(tree: UnitTree<Reading>, depth: number): UnitTree<Reading>[][] {
  if (!('units' in tree)) return [];
  return depth === 0 ? [[...tree.units]] : tree.units.flatMap((unit) => unitsAt(unit, depth - 1));
}

/**
 * Of each level the sum of squared weights of its units in the overall mean: times the variance of that level, what the level adds to
 * the variance of the mean. A level that isn't named has one unit in each unit above it.
 */
export function squaredWeights({ levels, tree }: ReadRepeated<number>): Readonly<Record<Level, number>> {
  const sums = levels.map(() => 0);
  const visit = (node: UnitTree<number>, depth: number, weight: number): void => {
    if (!('units' in node)) return;
    const share = weight / node.units.length;
    for (const unit of node.units) {
      sums[depth] += share * share;
      visit(unit, depth + 1, share);
    }
  };
  visit(tree, 0, 1);
  let above = 1;
  const ofLevel = (level: Level): number => {
    above = levels.includes(level) ? sums[levels.indexOf(level)] : above;
    return above;
  };
  const [grind, weighing, drawdown, spot] = LEVELS.map(ofLevel);
  return { grind, weighing, drawdown, spot };
}
