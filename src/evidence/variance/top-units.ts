import { mean } from '../../numeric/internal.js';
import type { ReadRepeated, UnitTree } from '../readings/read-repeated.js';

/**
 * The mean of each unit of the outermost level that was repeated, which alone says how figures scatter that were made anew; below
 * such a unit, repeats only average. One reading is one unit.
 *
 * @param read - how the readings were repeated
 * @param figures - one for each reading, in their order
 */
export function topUnitMeans({ tree, top }: ReadRepeated<unknown>, figures: readonly number[]): number[] {
  let next = 0;
  const meanOf = (node: UnitTree<unknown>): number =>
    'units' in node ? mean(node.units.map(meanOf)) : figures[next++];
  const unitsAt = (node: UnitTree<unknown>, depth: number): readonly UnitTree<unknown>[] =>
    !('units' in node) ? [node] : depth <= 0 ? node.units : node.units.flatMap((unit) => unitsAt(unit, depth - 1));
  return (top < 0 ? [tree] : unitsAt(tree, top)).map(meanOf);
}
