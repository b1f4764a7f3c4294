import { assertBetween, assertNonEmptyArray, assertObject, assertOptions } from '../../core/internal.js';
import { studentProbability } from '../../numeric/internal.js';
import type { SideGroup } from '../comparisons/prepared-group.js';
import { readSide, type Side } from '../comparisons/side.js';
import { LEVELS, type Level } from '../readings/level.js';
import { meanOfTree } from '../variance/unit-means.js';
import { exchangedUnits } from './exchanged-units.js';
import { type LevelUnits, unitsOfLevel } from './level-units.js';

/** A unit that lies further from its siblings than their scatter explains. */
export interface Outlier {
  readonly group?: string;
  readonly side: string;
  readonly level: Level;
  /** Path of the unit, such as `A.weighing[2]`. */
  readonly path: string;
  readonly value: number;
  /** Mean of the units it stands among, without it. */
  readonly others: number;
  /** Distance in standard deviations of such a difference, estimated without the unit. */
  readonly distance: number;
  /** Chance of so large a distance for the furthest of so many units. */
  readonly probability: number;
  /** Share of all scatter of its level that it carries alone. */
  readonly share: number;
  /** Another side whose mean it lies on: the labels may have been exchanged. */
  readonly resembles?: string;
}

/** Two units of different sides that fit far better in each other's place. */
export interface ExchangedUnits {
  readonly group?: string;
  readonly level: Level;
  readonly sides: readonly [string, string];
  readonly paths: readonly [string, string];
}

/** What {@link findOutliers} gives. */
export interface Outliers {
  readonly kind: 'outliers';
  readonly version: 1;
  /** Most surprising first. */
  readonly outliers: readonly Outlier[];
  readonly exchanged: readonly ExchangedUnits[];
}

/** What {@link findOutliers} may be told. */
export interface OutlierOptions {
  /**
   * Chance of any false alarm in all groups together.
   *
   * @default 0.02
   */
  readonly rate?: number | undefined;
}

/**
 * Units that lie far from their siblings, at every level, and units whose labels look exchanged. Nothing is left out: that is for people to decide.
 *
 * Each unit is compared with its siblings by the scatter of its level over all sides without it, as Grubbs' test does within one sample, so that
 * three weigh-ups are enough where other sides tell the scatter. Of two siblings both are named.
 *
 * @param groups - as {@link compareSides} takes them
 * @throws TintladderError as {@link compareSides}
 * @example
 * const sides = { R: { weighing: [0, 1, 2] }, A: { weighing: [5, 6, 7] }, B: { weighing: [3, 4, 45] }, C: { weighing: [1, 2, 3] } };
 * findOutliers([{ sides, reference: 'R' }]).outliers[0].path // 'B.weighing[2]'
 * @see Grubbs (1969), Technometrics 11, 1; ISO 5725-2:2019, 8.3; Cook & Weisberg (1982), Residuals and Influence, for the deleted residual
 */
export function findOutliers(groups: readonly SideGroup[], options: OutlierOptions = {}): Outliers {
  assertNonEmptyArray(groups, 'groups');
  assertOptions(options, ['rate']);
  const { rate = 0.02 } = options;
  assertBetween(rate, 0, 1, 'options.rate');
  const found = groups.map((group, i) => {
    assertObject(group, `groups[${i}]`);
    assertObject(group.sides, `groups[${i}].sides`, 'readings by the name of their side');
    const { name, sides } = group;
    const read = Object.entries(sides).map(([side, given]) => readSide(side, given));
    const strata = LEVELS.flatMap((level) => unitsOfLevel(read, level) ?? []);
    const named = name === undefined ? {} : { group: name };
    return {
      outliers: strata.flatMap((stratum, depth) =>
        outliersOf(stratum, read, shareOfRate(depth, strata.length, rate / groups.length)).map((outlier) => ({
          ...named,
          ...outlier,
        })),
      ),
      exchanged: strata.flatMap((stratum) =>
        exchangedUnits(stratum, (FOR_EXCHANGES * rate) / groups.length / strata.length).map((pair) => ({
          ...named,
          ...pair,
        })),
      ),
    };
  });
  return {
    kind: 'outliers',
    version: 1,
    outliers: found.flatMap(({ outliers }) => outliers).sort((a, b) => a.probability - b.probability),
    exchanged: found.flatMap(({ exchanged }) => exchanged),
  };
}

/** Parts of the rate: exchanged labels are looked for among many pairs, which are no more than ways to arrange few units. */
const FOR_OUTLIERS = 0.85;
const FOR_EXCHANGES = 0.15;

/** The outermost level has by far the fewest units and gets most of what there is. */
function shareOfRate(i: number, levels: number, rate: number): number {
  if (levels === 1) return FOR_OUTLIERS * rate;
  return FOR_OUTLIERS * rate * (i === 0 ? 0.7 : 0.3 / (levels - 1));
}

function outliersOf(
  { level, families, squares, degreesOfFreedom }: LevelUnits,
  sides: readonly Side[],
  rate: number,
): Outlier[] {
  if (degreesOfFreedom < 3) return [];
  // Of two siblings both lie equally far from their mean: one test, and nothing tells which it is.
  const count = families.reduce((sum, { units }) => sum + (units.length === 2 ? 1 : units.length), 0);
  return families.flatMap(({ side, units, mean }) =>
    units.flatMap(({ path, value }): Outlier[] => {
      const n = units.length;
      const own = ((value - mean) ** 2 * n) / (n - 1);
      const rest = Math.max(squares - own, 0) / (degreesOfFreedom - 1);
      if (!(own > 0)) return [];
      const distance = rest > 0 ? Math.sqrt(own / rest) : Number.MAX_VALUE;
      const probability = Math.min(1, 2 * count * (1 - studentProbability(distance, degreesOfFreedom - 1)));
      if (probability > rate) return [];
      const others = (mean * n - value) / (n - 1);
      const resembles = nearestSide(value, side, sides, Math.sqrt(rest));
      return [
        {
          side,
          level,
          path,
          value,
          others,
          distance,
          probability,
          share: own / squares,
          ...(resembles !== undefined && { resembles }),
        },
      ];
    }),
  );
}

/** The other side whose mean lies within two standard deviations of a unit, if one does. */
function nearestSide(value: number, side: string, sides: readonly Side[], deviation: number): string | undefined {
  const others = sides.filter(({ name }) => name !== side);
  if (others.length === 0) return undefined;
  const distance = ({ read }: Side) => Math.abs(meanOfTree(read.tree) - value);
  const nearest = others.reduce((a, b) => (distance(b) < distance(a) ? b : a));
  return distance(nearest) <= 2 * deviation ? nearest.name : undefined;
}
