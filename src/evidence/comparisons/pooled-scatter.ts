import { fisherQuantile } from '../../numeric/internal.js';
import type { Level } from '../readings/level.js';
import type { VarianceTerm } from '../variance/variance-term.js';
import { fitBlocks, fitSides, type SideFit } from './block-fit.js';
import type { Side } from './side.js';

/**
 * From which quantile of F on a variance is no longer taken for that of the others: early for an interval by itself, late for one that is
 * one of many, where the few degrees of freedom of one side cost far more; never where sides are ranked.
 */
export const GUARDS = { single: 0.8, joint: 0.99, none: 1 } as const;

/** One of {@link GUARDS}. */
export type Guard = keyof typeof GUARDS;

/** How much the top units of sides scatter whose outermost repeated level is the same. */
export interface PooledScatter {
  readonly level: Level;
  readonly sides: readonly string[];
  readonly fit: SideFit;
  /** Of one unit, over all sides. */
  readonly pooled: VarianceTerm;
  /** Sides that scatter so much more than the others that the pooled scatter isn't theirs, by guard. */
  readonly wider: Readonly<Record<Guard, readonly string[]>>;
  /** Of one unit of a side by itself. */
  own(side: string): VarianceTerm;
  /** Of one unit, over the other sides; undefined where there are none. */
  rest(side: string): VarianceTerm | undefined;
}

/**
 * The scatter of top units, pooled over the sides that were repeated at one level.
 *
 * @param sides - all of `level`, each with at least two units
 */
export function poolScatter(level: Level, sides: readonly Side[]): PooledScatter {
  const fit = fitBlocks(sides) ?? fitSides(sides);
  // Blocks take their degrees of freedom from all sides alike.
  const units = sides.reduce((sum, side) => sum + side.units.length - 1, 0);
  const each = new Map(
    sides.map((side) => {
      const squares = side.units.reduce((sum, unit) => sum + (fit.residuals.get(unit) ?? 0) ** 2, 0);
      const degreesOfFreedom = ((side.units.length - 1) * fit.degreesOfFreedom) / units;
      return [side.name, { squares, degreesOfFreedom }] as const;
    }),
  );
  const over = (chosen: (name: string) => boolean): VarianceTerm | undefined => {
    const parts = [...each].filter(([name]) => chosen(name)).map(([, part]) => part);
    const degreesOfFreedom = parts.reduce((sum, part) => sum + part.degreesOfFreedom, 0);
    const squares = parts.reduce((sum, part) => sum + part.squares, 0);
    return degreesOfFreedom > 0 ? { variance: squares / degreesOfFreedom, degreesOfFreedom } : undefined;
  };
  const none: VarianceTerm = { variance: 0, degreesOfFreedom: 1 };
  const own = new Map(sides.map(({ name }) => [name, over((other) => other === name) ?? none]));
  const rest = new Map(sides.map(({ name }) => [name, over((other) => other !== name)]));
  const beyond = (guard: Guard) =>
    sides.flatMap(({ name }) => (isBeyond(own.get(name), rest.get(name), GUARDS[guard]) ? [name] : []));
  return {
    level,
    sides: sides.map(({ name }) => name),
    fit,
    pooled: over(() => true) ?? none,
    wider: { single: beyond('single'), joint: beyond('joint'), none: [] },
    own: (side) => own.get(side) ?? none,
    rest: (side) => rest.get(side),
  };
}

function isBeyond(alone: VarianceTerm | undefined, others: VarianceTerm | undefined, quantile: number): boolean {
  if (alone === undefined || others === undefined) return false;
  // No F is below its quantile at so little, and most sides are spared the search for it.
  if (alone.variance <= others.variance) return false;
  return alone.variance > fisherQuantile(quantile, alone.degreesOfFreedom, others.degreesOfFreedom) * others.variance;
}
