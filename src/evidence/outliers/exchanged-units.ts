import { fisherQuantile } from '../../numeric/internal.js';
import type { Level } from '../readings/level.js';
import type { LevelUnits, Siblings } from './level-units.js';

/** Two units of different sides that fit far better in each other's place. */
export interface ExchangedPair {
  readonly level: Level;
  readonly sides: readonly [string, string];
  readonly paths: readonly [string, string];
}

/**
 * Pairs of units of different sides whose exchange takes away far more scatter than chance would.
 *
 * @param rate - chance of any false alarm, over all pairs that could be exchanged
 */
export function exchangedUnits(
  { level, families, squares, degreesOfFreedom }: LevelUnits,
  rate: number,
): ExchangedPair[] {
  if (degreesOfFreedom < 4) return [];
  const pairs = families.flatMap((one, i) =>
    families.slice(0, i).flatMap((other) => (other.side === one.side ? [] : [[other, one] as const])),
  );
  const count = pairs.reduce((sum, [one, other]) => sum + one.units.length * other.units.length, 0);
  if (count === 0) return [];
  const found = pairs.flatMap(([one, other]) =>
    one.units.flatMap((first) =>
      other.units.map((second) => {
        const gained = gain(one, first.value, second.value) + gain(other, second.value, first.value);
        const sides = [one.side, other.side] as const;
        return { gained, pair: { level, sides, paths: [first.path, second.path] as const } };
      }),
    ),
  );
  const best = found.reduce((a, b) => (b.gained > a.gained ? b : a));
  const left = Math.max(squares - best.gained, 0);
  const ratio = best.gained / 2 / (left / (degreesOfFreedom - 2));
  return ratio > fisherQuantile(1 - rate / count, 2, degreesOfFreedom - 2) ? [best.pair] : [];
}

/** By how much a family scatters less with another value in the place of one of its units. */
function gain({ units, mean }: Siblings, without: number, other: number): number {
  const n = units.length;
  const moved = mean + (other - without) / n;
  return without ** 2 - other ** 2 - n * (mean ** 2 - moved ** 2);
}
