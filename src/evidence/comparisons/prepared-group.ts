import { TintladderError } from '../../core/index.js';
import { assertObject, assertOptions } from '../../core/internal.js';
import { type Claim, highestClaim, type Population } from '../readings/claim.js';
import { LEVELS, type Level } from '../readings/level.js';
import { readRepeated } from '../readings/read-repeated.js';
import type { Repeated } from '../readings/repeated.js';
import type { KnownVariances } from '../variance/precision.js';
import { sumOfVariances, type VarianceTerm } from '../variance/variance-term.js';

import { type DifferenceVariance, differenceVariance } from './difference-variance.js';
import { type Guard, type PooledScatter, poolScatter } from './pooled-scatter.js';
import { type SharedScatter, sharedScatter } from './shared-scatter.js';
import { type Shortfall, shortfallOf } from './shortfall.js';
import { readSide, type Side } from './side.js';

/** Sides that share a reference, such as the packages of one paint. */
export interface SideGroup {
  readonly name?: string | undefined;
  /** Readings of each side on a scale on which they scatter alike: natural logarithms for a strength. */
  readonly sides: Readonly<Record<string, Repeated<number>>>;
  /** Name of the side that the others are compared with. */
  readonly reference: string;
  /**
   * Something read beside the sides that moves them all, such as the white: for each of its readings what every trial's difference to the
   * reference would be with this reading in the place of the mean. One reading counts as exact.
   */
  readonly white?: Repeated<Readonly<Record<string, number>>> | undefined;
}

/** What rules the claims and the variances of a group. */
export interface GroupRules {
  readonly known: KnownVariances;
  readonly claim: Claim | undefined;
  readonly population: Population;
  readonly resolution: number;
}

/** Two sides with what their difference is known by. */
export interface Pair {
  readonly difference: number;
  readonly first: Side;
  readonly second: Side;
  readonly claim: Claim;
  readonly shortfall?: Shortfall | undefined;
  /** Variance of the difference for an interval by itself, as one of many, and where sides are ranked; absent where nothing tells it. */
  readonly variance: Readonly<Record<Guard, DifferenceVariance>> | undefined;
}

/** A group with its scatter pooled, ready for any pair. */
export interface PreparedGroup {
  readonly name: string | undefined;
  readonly sides: readonly Side[];
  readonly reference: Side;
  readonly pools: ReadonlyMap<Level, PooledScatter>;
  readonly shared: SharedScatter;
  /** Each trial less the reference. */
  readonly trials: readonly Pair[];
  /** Each pair of trials, the later less the earlier. */
  readonly pairs: readonly Pair[];
  /** The difference of the first less the second. */
  pairOf(first: string, second: string): Pair;
}

/**
 * Reads a group of sides and pools their scatter.
 *
 * @throws TintladderError `no-reference` where no side is called so; and as {@link readSide}
 */
export function prepareGroup(group: SideGroup, path: string, rules: GroupRules): PreparedGroup {
  assertObject(group, path);
  assertOptions(group, ['name', 'sides', 'reference', 'white'], path);
  assertObject(group.sides, `${path}.sides`, 'readings by the name of their side');
  const sides = Object.entries(group.sides).map(([name, given]) => readSide(name, given));
  const reference = sides.find(({ name }) => name === group.reference);
  if (!reference) {
    const expected = `one of ${sides.map(({ name }) => name).join(', ')}`;
    const fault = { path: `${path}.reference`, received: group.reference, expected };
    throw new TintladderError('no-reference', { kind: 'argument', ...fault });
  }
  const pools = new Map(
    LEVELS.flatMap((level) => {
      const own = sides.filter(({ top }) => top === level);
      return own.length > 0 ? [[level, poolScatter(level, own)] as const] : [];
    }),
  );
  const names = sides.filter((side) => side !== reference).map(({ name }) => name);
  const white = group.white === undefined ? undefined : readRepeated(group.white, `${path}.white`);
  const shared = sharedScatter(white, names);
  const byName = new Map(sides.map((side) => [side.name, side]));
  const made = new Map<string, Pair>();
  const pairOf = (first: string, second: string): Pair => {
    const key = JSON.stringify([first, second]);
    const found = made.get(key);
    if (found) return found;
    const [one, other] = [byName.get(first) ?? reference, byName.get(second) ?? reference];
    const pair = makePair(one, other, pools, shared.of(first, second), rules);
    made.set(key, pair);
    return pair;
  };
  return {
    name: group.name,
    sides,
    reference,
    pools,
    shared,
    trials: names.map((name) => pairOf(name, reference.name)),
    pairs: names.flatMap((name, i) => names.slice(0, i).map((earlier) => pairOf(name, earlier))),
    pairOf,
  };
}

function makePair(
  first: Side,
  second: Side,
  pools: ReadonlyMap<Level, PooledScatter>,
  common: VarianceTerm | undefined,
  rules: GroupRules,
): Pair {
  const { claim, shortfall } = claimOf([first, second], rules);
  const pool = first.top !== undefined && first.top === second.top ? pools.get(first.top) : undefined;
  const meanOf = ({ name, mean }: Side) => pool?.fit.means.get(name) ?? mean;
  const { known, resolution } = rules;
  const under = (guard: Guard): DifferenceVariance | undefined => {
    const own = differenceVariance(first, second, claim, { known, resolution, pools, guard });
    return own && common ? { ...own, ...sumOfVariances([own, common]) } : own;
  };
  const none = under('none');
  // Most pairs are of sides that scatter as the others do: then all three are one.
  const guarded = (guard: Guard) => {
    const wider = [first, second].some(({ name, top }) => top && pools.get(top)?.wider[guard].includes(name));
    return (wider && under(guard)) || none;
  };
  const [single, joint] = [guarded('single'), guarded('joint')];
  const variance = none && single && joint ? { none, single, joint } : undefined;
  return { first, second, claim, shortfall, difference: meanOf(first) - meanOf(second), variance };
}

const RANK: Readonly<Record<Claim, number>> = { film: 0, 'mill-base': 1, batch: 1, package: 2 };

function claimOf(sides: readonly Side[], { known, claim, population }: GroupRules) {
  const reached = highestClaim(
    sides.map(({ read }) => read),
    [...known.keys()],
    population,
  );
  const wanted = claim ?? (reached === 'film' ? (population === 'batch' ? 'batch' : 'mill-base') : reached);
  if (RANK[reached] >= RANK[wanted]) return { claim: wanted };
  return { claim: reached, shortfall: shortfallOf(sides, wanted, known) };
}
