import { invertSymmetric } from '../../numeric/internal.js';
import type { Side, TopUnit } from './side.js';

/** What sides are worth when what their days or sessions did to all of them is taken out. */
export interface SideFit {
  /** Mean of each side, by name. */
  readonly means: ReadonlyMap<string, number>;
  /** What is left of each unit. */
  readonly residuals: ReadonlyMap<TopUnit, number>;
  readonly degreesOfFreedom: number;
  /** How many blocks were taken out; 0 where none were. */
  readonly blocks: number;
  /** Variance of the difference of two sides, in variances of one unit. */
  contrast(one: string, other: string): number;
}

/** Sides as they are: means of their units. */
export function fitSides(sides: readonly Side[]): SideFit {
  const count = new Map(sides.map(({ name, units }) => [name, units.length]));
  return {
    means: new Map(sides.map(({ name, mean }) => [name, mean])),
    residuals: new Map(sides.flatMap(({ units, mean }) => units.map((unit) => [unit, unit.mean - mean] as const))),
    degreesOfFreedom: sides.reduce((sum, { units }) => sum + units.length - 1, 0),
    blocks: 0,
    contrast: (one, other) => 1 / (count.get(one) ?? 1) + 1 / (count.get(other) ?? 1),
  };
}

/**
 * Sides and blocks by least squares: `unit = side + block + rest`.
 *
 * @returns undefined where a unit lies in no block, there is one block only, blocks don't connect the sides, or nothing is left to
 * estimate the scatter from
 * @see Box, Hunter & Hunter (2005), Statistics for Experimenters, chapter 4: randomised blocks, complete or not
 */
export function fitBlocks(sides: readonly Side[]): SideFit | undefined {
  const units = sides.flatMap((side) => side.units);
  const labels = [...new Set(units.flatMap(({ blocks }) => [...blocks.keys()]))];
  if (labels.length < 2 || units.some(({ blocks }) => blocks.size === 0)) return undefined;
  // The last block is the one that the others are measured from.
  const effects = labels.slice(0, -1);
  const size = sides.length + effects.length;
  const degreesOfFreedom = units.length - size;
  if (degreesOfFreedom < 1) return undefined;
  const place = new Map(sides.map(({ name }, i) => [name, i]));
  const rows = units.map((unit) => [
    ...sides.map(({ name }) => (name === unit.side ? 1 : 0)),
    ...effects.map((label) => unit.blocks.get(label) ?? 0),
  ]);
  const normal = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => rows.reduce((sum, row) => sum + row[i] * row[j], 0)),
  );
  const inverse = invertSymmetric(normal);
  if (!inverse) return undefined;
  const right = normal.map((_, i) => rows.reduce((sum, row, k) => sum + row[i] * units[k].mean, 0));
  const solution = inverse.map((row) => row.reduce((sum, value, i) => sum + value * right[i], 0));
  // A side's mean is given for the average block, so that figures stay near what was read.
  const level = effects.reduce((sum, _, i) => sum + solution[sides.length + i], 0) / labels.length;
  return {
    means: new Map(sides.map(({ name }, i) => [name, solution[i] + level])),
    residuals: new Map(
      units.map((unit, k) => [unit, unit.mean - rows[k].reduce((sum, value, i) => sum + value * solution[i], 0)]),
    ),
    degreesOfFreedom,
    blocks: labels.length,
    contrast: (one, other) => {
      const [i, j] = [place.get(one) ?? 0, place.get(other) ?? 0];
      return inverse[i][i] + inverse[j][j] - 2 * inverse[i][j];
    },
  };
}
