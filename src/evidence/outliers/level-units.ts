import { mean } from '../../numeric/internal.js';
import type { Side } from '../comparisons/side.js';
import type { Level } from '../readings/level.js';
import { meanOfTree, readingsOf, unitsAt } from '../variance/unit-means.js';

/** Units that are parts of one and the same unit. */
export interface Siblings {
  readonly side: string;
  readonly mean: number;
  readonly units: readonly { readonly path: string; readonly value: number }[];
}

/** All units of one level that have siblings. */
export interface LevelUnits {
  readonly level: Level;
  readonly families: readonly Siblings[];
  /** Sum of squares around the means of the families. */
  readonly squares: number;
  readonly degreesOfFreedom: number;
}

/** The units of a level over several sides; undefined where none was repeated. */
export function unitsOfLevel(sides: readonly Side[], level: Level): LevelUnits | undefined {
  const families = sides.flatMap(({ name, read }): Siblings[] => {
    const depth = read.levels.indexOf(level);
    if (depth < 0) return [];
    return unitsAt(read.tree, depth)
      .filter((units) => units.length > 1)
      .map((trees) => {
        const units = trees.map((tree) => ({ path: pathOf(readingsOf(tree)[0].path, level), value: meanOfTree(tree) }));
        return { side: name, mean: mean(units.map(({ value }) => value)), units };
      });
  });
  if (families.length === 0) return undefined;
  return {
    level,
    families,
    squares: families.reduce(
      (sum, { units, mean: of }) => sum + units.reduce((s, { value }) => s + (value - of) ** 2, 0),
      0,
    ),
    degreesOfFreedom: families.reduce((sum, { units }) => sum + units.length - 1, 0),
  };
}

/** The path of a unit from that of its first reading: up to the index at its level. */
function pathOf(reading: string, level: Level): string {
  const at = reading.lastIndexOf(`.${level}[`);
  return reading.slice(0, reading.indexOf(']', at) + 1);
}
