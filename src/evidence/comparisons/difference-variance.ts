import { studentQuantile } from '../../numeric/internal.js';
import { type Claim, levelOfClaim } from '../readings/claim.js';
import { LEVELS, type Level } from '../readings/level.js';
import type { KnownVariances } from '../variance/precision.js';
import { scaledVariance, sumOfVariances, type VarianceTerm } from '../variance/variance-term.js';
import type { Guard, PooledScatter } from './pooled-scatter.js';
import type { Side } from './side.js';

/**
 * Where the scatter of units that were repeated was taken from: pooled over all sides, each side's own because one scatters more than the
 * others, the laboratory's history because it is larger, or the last digit because readings don't differ by it; `none` where nothing was repeated.
 */
export const SCATTER_BASES = ['pooled', 'own', 'history', 'resolution', 'none'] as const;

/** One of {@link SCATTER_BASES}. */
export type ScatterBasis = (typeof SCATTER_BASES)[number];

/** The variance of a difference of two sides and what it is made of. */
export interface DifferenceVariance extends VarianceTerm {
  readonly basis: ScatterBasis;
  /** The part of it that comes from the second side. */
  readonly ofSecond: number;
  /** Levels that were not repeated and whose scatter is the history's. */
  readonly fromHistory: readonly Level[];
}

/** What is known beside the readings. */
export interface Knowledge {
  readonly known: KnownVariances;
  /** Smallest step of a reading, in its unit; 0 where it is fine. */
  readonly resolution: number;
  readonly pools: ReadonlyMap<Level, PooledScatter>;
  /** From when on a side's own scatter counts. */
  readonly guard: Guard;
}

/**
 * The variance of the difference of two sides for a claim.
 *
 * @returns undefined where a side has neither repeated units nor a history for what was not repeated
 */
export function differenceVariance(
  first: Side,
  second: Side,
  claim: Claim,
  knowledge: Knowledge,
): DifferenceVariance | undefined {
  const { known } = knowledge;
  const above = unrepeated([first, second], claim, known);
  if (above === undefined) return undefined;
  const repeated = repeatedVariance(first, second, knowledge);
  if (repeated === undefined && above.terms.length === 0) return undefined;
  const sum = sumOfVariances([...(repeated ? repeated.terms : []), ...above.terms]);
  if (!(sum.variance > 0)) return undefined;
  const ofRepeated = repeated ? repeated.terms.reduce((total, term) => total + term.variance, 0) : 0;
  return {
    ...sum,
    basis: repeated?.basis ?? 'none',
    ofSecond: ofRepeated * (repeated?.shareOfSecond ?? 0) + above.ofSecond,
    fromHistory: above.levels,
  };
}

/** Levels from that of the claim down to the first repeated one: one unit each, known from history only. */
function unrepeated(sides: readonly Side[], claim: Claim, known: KnownVariances) {
  const coefficients = new Map<Level, number>();
  let ofSecond = 0;
  for (const [i, { top }] of sides.entries()) {
    const end = top === undefined ? LEVELS.length : LEVELS.indexOf(top);
    const claimed = levelOfClaim(claim) ?? (top === undefined ? 'spot' : undefined);
    const levels = claimed === undefined ? [] : LEVELS.slice(LEVELS.indexOf(claimed), end);
    const found = levels.filter((level) => known.has(level));
    // A reading that stands alone scatters, and nothing tells by how much.
    if (top === undefined && found.length === 0) return undefined;
    for (const level of found) {
      coefficients.set(level, (coefficients.get(level) ?? 0) + 1);
      if (i === 1) ofSecond += known.get(level)?.variance ?? 0;
    }
  }
  const levels = [...coefficients.keys()];
  const terms = levels.flatMap((level) => {
    const term = known.get(level);
    return term ? [scaledVariance(term, coefficients.get(level) ?? 0)] : [];
  });
  return { levels, terms, ofSecond };
}

interface RepeatedVariance {
  readonly terms: readonly VarianceTerm[];
  readonly basis: ScatterBasis;
  readonly shareOfSecond: number;
}

/** What the repeated units of both sides add: the largest of today's scatter, the history's and the resolution's. */
function repeatedVariance(first: Side, second: Side, knowledge: Knowledge): RepeatedVariance | undefined {
  const together = first.top !== undefined && first.top === second.top;
  const given = [first, second].filter(({ top }) => top !== undefined);
  if (given.length === 0) return undefined;
  const today = together ? todayOfPair(first, second, knowledge) : todayApart(given, second, knowledge);
  if (today === undefined) return undefined;
  const { known, resolution } = knowledge;
  const floor = floorOf(given, known).map((term) => scaledVariance(term, today.blockFactor));
  const last = given.reduce((sum, { units }) => sum + resolution ** 2 / 12 / units.length, 0);
  const candidates: (RepeatedVariance & { variance: number })[] = [
    { ...today, variance: total(today.terms) },
    { terms: floor, basis: 'history', shareOfSecond: today.shareOfSecond, variance: total(floor) },
    {
      terms: [{ variance: last, degreesOfFreedom: Number.POSITIVE_INFINITY }],
      basis: 'resolution',
      shareOfSecond: today.shareOfSecond,
      variance: last,
    },
  ];
  return candidates.reduce((largest, candidate) => (candidate.variance > largest.variance ? candidate : largest));
}

function total(terms: readonly VarianceTerm[]): number {
  return terms.reduce((sum, { variance }) => sum + variance, 0);
}

/** The history's variance of the means of repeated units, level by level. */
function floorOf(sides: readonly Side[], known: KnownVariances): VarianceTerm[] {
  return LEVELS.flatMap((level) => {
    const term = known.get(level);
    const weight = sides
      .filter(({ top }) => top !== undefined && LEVELS.indexOf(level) >= LEVELS.indexOf(top))
      .reduce((sum, { squaredWeights }) => sum + squaredWeights[level], 0);
    return term && weight > 0 ? [scaledVariance(term, weight)] : [];
  });
}

interface Today extends RepeatedVariance {
  /** By how much blocks change the variance of a difference against that of plain means. */
  readonly blockFactor: number;
}

function todayOfPair(first: Side, second: Side, { pools, guard }: Knowledge): Today | undefined {
  const pool = first.top && pools.get(first.top);
  if (!pool) return undefined;
  const contrast = pool.fit.contrast(first.name, second.name);
  const plain = 1 / first.units.length + 1 / second.units.length;
  const blockFactor = contrast / plain;
  const pooled: Today = {
    terms: [scaledVariance(pool.pooled, contrast)],
    basis: 'pooled',
    shareOfSecond: 1 / second.units.length / plain,
    blockFactor,
  };
  const wider = [first, second].map(({ name }) => pool.wider[guard].includes(name));
  if (!wider.includes(true)) return pooled;
  const scatterOf = (side: Side, i: number, other: Side) =>
    wider[i] ? pool.own(side.name) : (pool.rest(other.name) ?? pool.own(side.name));
  const terms = [
    scaledVariance(scatterOf(first, 0, second), blockFactor / first.units.length),
    scaledVariance(scatterOf(second, 1, first), blockFactor / second.units.length),
  ];
  const apart: Today = { terms, basis: 'own', shareOfSecond: terms[1].variance / total(terms), blockFactor };
  return reach(terms) > reach(pooled.terms) ? apart : pooled;
}

function reach(terms: readonly VarianceTerm[]): number {
  const { variance, degreesOfFreedom } = sumOfVariances(terms);
  return studentQuantile(0.975, degreesOfFreedom) * Math.sqrt(variance);
}

/** Sides repeated at different levels, or only one of them: each with the pool of its own level. */
function todayApart(sides: readonly Side[], second: Side, { pools, guard }: Knowledge): Today | undefined {
  const terms = sides.map(({ name, top, units }): VarianceTerm | undefined => {
    const pool = top && pools.get(top);
    return pool && scaledVariance(pool.wider[guard].includes(name) ? pool.own(name) : pool.pooled, 1 / units.length);
  });
  const found = terms.filter((term) => term !== undefined);
  if (found.length < sides.length) return undefined;
  const i = sides.indexOf(second);
  const all = total(found);
  return {
    terms: found,
    basis: 'pooled',
    shareOfSecond: i < 0 || all === 0 ? 0 : found[i].variance / all,
    blockFactor: 1,
  };
}
