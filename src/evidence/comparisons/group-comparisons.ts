import { studentQuantile } from '../../numeric/internal.js';
import { describeRepetition } from '../readings/repetition.js';
import { type Direction, notProvenWorse } from './best-set.js';
import { groupWarnings } from './group-warnings.js';
import type { Pair, PreparedGroup } from './prepared-group.js';
import { shrunkDifference } from './shrunk-leader.js';
import type { BestSides, Finding, GroupComparisons, SideComparison } from './side-comparisons.js';

/** Chances to err of a single comparison with the reference, of a single pair, and of the best set of a group. */
export interface ErrorRates {
  readonly trials: number;
  readonly pairs: number;
  readonly best: number;
}

/** What a prepared group says at given chances to err. */
export function groupComparisons(group: PreparedGroup, rates: ErrorRates, direction: Direction): GroupComparisons {
  const { name, sides, reference, pools, trials, pairs, shared } = group;
  return {
    ...(name !== undefined && { name }),
    reference: reference.name,
    sides: sides.map((side) => ({ name: side.name, mean: side.mean, repetition: describeRepetition(side.read) })),
    scatter: [...pools.values()].map(({ level, pooled, sides: pooledOver, fit, wider }) => ({
      level,
      standardDeviation: Math.sqrt(pooled.variance),
      degreesOfFreedom: pooled.degreesOfFreedom,
      sides: pooledOver,
      blocks: fit.blocks,
      wider: wider.single,
    })),
    againstReference: trials.map((pair) => comparisonOf(pair, rates.trials)),
    pairs: pairs.map((pair) => comparisonOf(pair, rates.pairs)),
    best: bestOf(group, direction, rates.best),
    warnings: groupWarnings(sides, reference, pools, shared),
  };
}

/** The share that each interval by itself may miss. */
const SINGLE = 0.05;
/** Infinity has no JSON; so many degrees of freedom are as good. */
const MANY = 1e9;

function comparisonOf(pair: Pair, rate: number): SideComparison {
  const { first, second, claim, shortfall, difference, variance } = pair;
  const names = { trial: first.name, reference: second.name, difference, claim };
  if (!variance) {
    return { ...names, finding: 'undecided', basis: 'none', fromHistory: [], ...(shortfall && { shortfall }) };
  }
  const { single, joint: jointly } = variance;
  const reachOf = (missed: number, { variance: of, degreesOfFreedom }: typeof single) =>
    studentQuantile(1 - missed / 2, degreesOfFreedom) * Math.sqrt(of);
  const reach = reachOf(SINGLE, single);
  // The guard for one of many is the laxer one; what holds for all together is still never narrower than for one.
  const jointReach = Math.max(reach, reachOf(rate, jointly));
  const joint = { low: difference - jointReach, high: difference + jointReach };
  const found: Finding = joint.low > 0 ? 'higher' : joint.high < 0 ? 'lower' : 'undecided';
  return {
    ...names,
    standardDeviation: Math.sqrt(single.variance),
    degreesOfFreedom: Math.min(single.degreesOfFreedom, MANY),
    interval: { low: difference - reach, high: difference + reach },
    joint,
    finding: shortfall ? 'undecided' : found,
    basis: single.basis,
    fromHistory: single.fromHistory,
    ...(shortfall && { shortfall }),
  };
}

function bestOf({ sides, reference, trials, pairOf }: PreparedGroup, direction: Direction, rate: number): BestSides {
  const sign = direction === 'highest' ? 1 : -1;
  const names = sides.filter((side) => side !== reference).map(({ name }) => name);
  const remaining = notProvenWorse(
    names,
    (first, second) => {
      const { difference, variance, shortfall } = pairOf(first, second);
      // What carries no claim proves nothing.
      return { difference: sign * difference, variance: shortfall ? undefined : variance?.none };
    },
    rate,
  );
  const figures = trials.map(({ first, difference, variance }) => ({
    trial: first.name,
    difference,
    ownVariance: variance ? variance.none.variance - variance.none.ofSecond : 0,
  }));
  if (figures.length === 0) return { direction, notProvenWorse: remaining };
  const leader = figures.reduce((a, b) => (sign * b.difference > sign * a.difference ? b : a));
  const { trial, difference } = leader;
  return {
    direction,
    notProvenWorse: remaining,
    leader: { trial, difference, shrunk: shrunkDifference(figures, leader) },
  };
}
