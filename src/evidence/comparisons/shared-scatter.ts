import { mean, variance } from '../../numeric/internal.js';
import type { ReadRepeated, UnitTree } from '../readings/read-repeated.js';
import { unitsAt } from '../variance/unit-means.js';
import type { VarianceTerm } from '../variance/variance-term.js';

/** Scatter of something that moves all sides, such as the white. */
export interface SharedScatter {
  /** Units it rests on; 0 where nothing was given, 1 where it counts as exact. */
  readonly units: number;
  /** What it adds to the variance of a difference of two sides. */
  of(first: string, second: string): VarianceTerm | undefined;
}

/** The scatter of a shared reading, from what each of its units alone would make of every trial. */
export function sharedScatter(
  read: ReadRepeated<Readonly<Record<string, number>>> | undefined,
  trials: readonly string[],
): SharedScatter {
  if (read === undefined) return { units: 0, of: () => undefined };
  if (read.top < 0) return { units: 1, of: () => undefined };
  const units = unitsAt(read.tree, read.top).flat();
  const figures = new Map(trials.map((trial) => [trial, units.map((unit) => meanFor(unit, trial))]));
  return {
    units: units.length,
    of: (first, second) => {
      const differences = units.map((_, i) => (figures.get(first)?.[i] ?? 0) - (figures.get(second)?.[i] ?? 0));
      const shared = variance(differences) / units.length;
      return shared > 0 ? { variance: shared, degreesOfFreedom: units.length - 1 } : undefined;
    },
  };
}

function meanFor(tree: UnitTree<Readonly<Record<string, number>>>, trial: string): number {
  return 'units' in tree ? mean(tree.units.map((unit) => meanFor(unit, trial))) : (tree.reading[trial] ?? 0);
}
