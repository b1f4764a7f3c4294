import { assertNonEmptyArray } from '../../core/internal.js';
import { LEVELS, type Level } from '../readings/level.js';
import { type ReadRepeated, readRepeated, type UnitTree } from '../readings/read-repeated.js';
import type { Repeated } from '../readings/repeated.js';

/** How much the units of one level scatter around the unit they are parts of. */
export interface VarianceComponent {
  readonly level: Level;
  /** Of this level alone, without what its parts add; 0 where the parts explain all. */
  readonly standardDeviation: number;
  /** On which the component is known, by Satterthwaite; those of its mean square where the component is 0. */
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
  readonly meanSquareDegreesOfFreedom: number;
}

/** What {@link varianceComponents} gives. */
export interface VarianceComponents {
  readonly kind: 'variance-components';
  readonly version: 1;
  /** Outermost level first; levels of which no unit was repeated are left out. */
  readonly components: readonly VarianceComponent[];
}

interface Stratum {
  readonly level: Level;
  squares: number;
  degreesOfFreedom: number;
  /** Expected sum of squares, as multiples of the variance of each level. */
  readonly coefficients: Map<Level, number>;
}

/**
 * Variance components of nested readings: how much grinds, weigh-ups, drawdowns and spots scatter, each by itself.
 *
 * Balanced designs give the classical analysis of variance; unbalanced ones the same with the expected mean squares that belong to them
 * (Henderson's first method), which needs no iteration. Several sides are pooled; each has its own mean.
 *
 * @param sides - readings of each side, or of each control reduction; anything that has a mean of its own
 * @throws TintladderError as every function that takes repeated readings: `repetition-unstated`, `level-misplaced`, `empty`, `wrong-length`
 * @example varianceComponents([{ weighing: [{ spot: [1, 2] }, { spot: [4, 5] }] }]).components[0].standardDeviation // 2.062
 * @see Searle, Casella & McCulloch (1992), Variance Components, chapter 5
 */
export function varianceComponents(sides: readonly Repeated<number>[]): VarianceComponents {
  assertNonEmptyArray(sides, 'sides');
  return componentsOf(sides.map((side, i) => readRepeated(side, `sides[${i}]`)));
}

/** The same of readings that were read already. */
export function componentsOf(sides: readonly ReadRepeated<number>[]): VarianceComponents {
  const strata = LEVELS.map((level): Stratum => ({ level, squares: 0, degreesOfFreedom: 0, coefficients: new Map() }));
  for (const side of sides) addSquares(side, strata);
  const used = strata.filter(({ degreesOfFreedom }) => degreesOfFreedom > 0);
  const components: VarianceComponent[] = [];
  const weightsOf = new Map<Level, readonly number[]>();
  for (let i = used.length - 1; i >= 0; i--) {
    // From the innermost outwards: each mean square less what the levels within add to it; kept as a combination of mean squares.
    const { level, coefficients, degreesOfFreedom, squares } = used[i];
    const own = (coefficients.get(level) ?? 0) / degreesOfFreedom;
    const weights = used.map((_, j) => (j === i ? 1 / own : 0));
    for (let j = i + 1; j < used.length; j++) {
      const share = (coefficients.get(used[j].level) ?? 0) / degreesOfFreedom / own;
      (weightsOf.get(used[j].level) ?? []).forEach((weight, k) => {
        weights[k] -= share * weight;
      });
    }
    weightsOf.set(level, weights);
    const parts = used.map((stratum, k) => (weights[k] * stratum.squares) / stratum.degreesOfFreedom);
    const variance = parts.reduce((sum, part) => sum + part, 0);
    const spread = parts.reduce((sum, part, k) => sum + part ** 2 / used[k].degreesOfFreedom, 0);
    components.unshift({
      level,
      standardDeviation: Math.sqrt(Math.max(variance, 0)),
      degreesOfFreedom: variance > 0 && spread > 0 ? variance ** 2 / spread : degreesOfFreedom,
      meanSquare: squares / degreesOfFreedom,
      meanSquareDegreesOfFreedom: degreesOfFreedom,
    });
  }
  return { kind: 'variance-components', version: 1, components };
}

/** Sums of squares of one side, each level's around the means of the units above it, weighted by numbers of readings. */
function addSquares({ levels, tree }: ReadRepeated<number>, strata: readonly Stratum[]): void {
  const stratumOf = (depth: number) => strata[LEVELS.indexOf(levels[depth])];
  /** For each depth the squared numbers of readings of its units within a unit. */
  const visit = (
    node: UnitTree<number>,
    depth: number,
  ): { readonly n: number; readonly mean: number; readonly squaredSizes: readonly number[] } => {
    if (!('units' in node)) return { n: 1, mean: node.reading, squaredSizes: [] };
    const units = node.units.map((unit) => visit(unit, depth + 1));
    const n = units.reduce((sum, unit) => sum + unit.n, 0);
    const mean = units.reduce((sum, unit) => sum + unit.n * unit.mean, 0) / n;
    const stratum = stratumOf(depth);
    stratum.squares += units.reduce((sum, unit) => sum + unit.n * (unit.mean - mean) ** 2, 0);
    stratum.degreesOfFreedom += units.length - 1;
    const below = levels
      .slice(depth)
      .map((_, i) => (unit: (typeof units)[number]) => (i === 0 ? unit.n ** 2 : unit.squaredSizes[i - 1]));
    const squaredSizes = below.map((of) => units.reduce((sum, unit) => sum + of(unit), 0));
    below.forEach((of, i) => {
      const level = levels[depth + i];
      const within = units.reduce((sum, unit) => sum + of(unit) / unit.n, 0);
      stratum.coefficients.set(level, (stratum.coefficients.get(level) ?? 0) + within - squaredSizes[i] / n);
    });
    return { n, mean, squaredSizes };
  };
  visit(tree, 0);
}
