import { TintladderError } from '../../core/index.js';
import { assertBetween, assertNonEmptyArray, assertOneOf, assertOptions } from '../../core/internal.js';
import { type Family, singleRate } from '../multiplicity/families.js';
import { loadingOf } from '../multiplicity/many-to-one.js';
import { CLAIMS, type Claim, POPULATIONS, type Population } from '../readings/claim.js';
import { knownVariances, type Precision } from '../variance/precision.js';
import { DIRECTIONS, type Direction } from './best-set.js';
import { groupComparisons } from './group-comparisons.js';
import { type GroupRules, type Pair, type PreparedGroup, prepareGroup, type SideGroup } from './prepared-group.js';
import type { SideComparisons } from './side-comparisons.js';

/** What {@link compareSides} may be told. */
export interface CompareSidesOptions {
  /** The laboratory's history, in the unit of the readings. */
  readonly precision?: Precision | undefined;
  /** What is to be claimed; the highest that readings and history carry where left out, but nothing is found about a film then. */
  readonly claim?: Claim | undefined;
  /**
   * Whether recipes are compared, which must be ground anew, or batches, which are what they are.
   *
   * @default 'package'
   */
  readonly population?: Population | undefined;
  /**
   * Chance that any joint interval of all groups misses.
   *
   * @default 0.05
   */
  readonly rate?: number | undefined;
  /** @default 'highest' */
  readonly best?: Direction | undefined;
  /** Smallest step of a reading, in its unit. */
  readonly resolution?: number | undefined;
}

/**
 * Compares sides that were read repeatedly: each trial with the reference, each pair, and which may be the best, at one error rate.
 *
 * One figure a reading; the mean of each unit, up to the outermost level that was repeated; the scatter of those units pooled over the sides
 * of a group, or a side's own where it is wider; never less than the history's; levels that were not repeated from the history; Student's t
 * with Satterthwaite's degrees of freedom. Days and sessions are taken out where they connect the sides.
 *
 * @param groups - all groups of a study, such as its paints: they share one error rate
 * @returns comparisons with `interval` (95 % each) and `joint` (all together), the sides not proven worse than the best, and the scatter used
 * @throws TintladderError `no-reference`; `wrong-type`; `invalid-option`; `empty` without a group; `not-finite`; `precision-invalid`; and as every function
 * that takes repeated readings `repetition-unstated`, `level-misplaced`, `wrong-length`
 * @example
 * const sides = { R: { weighing: [0, 0.01, -0.01] }, A: { weighing: [0.06, 0.05, 0.07] } };
 * compareSides([{ sides, reference: 'R' }]).groups[0].againstReference[0].finding // 'higher'
 * @see Dunnett (1955), J. Am. Stat. Assoc. 50, 1096; Hsu (1996), Multiple Comparisons; Satterthwaite (1946), Biometrics Bulletin 2, 110
 */
export function compareSides(groups: readonly SideGroup[], options: CompareSidesOptions = {}): SideComparisons {
  const settings = checkOptions(options);
  assertNonEmptyArray(groups, 'groups');
  const prepared = groups.map((group, i) => prepareGroup(group, `groups[${i}]`, settings));
  const jointly = {
    trials: singleRate(settings.rate, prepared.flatMap(trialFamily)),
    pairs: singleRate(settings.rate, prepared.flatMap(pairFamily)),
    best: 1 - (1 - settings.rate) ** (1 / groups.length),
  };
  return {
    kind: 'side-comparisons',
    version: 1,
    rate: settings.rate,
    singleRate: jointly.trials,
    groups: prepared.map((group) => groupComparisons(group, jointly, settings.best)),
  };
}

interface Settings extends GroupRules {
  readonly rate: number;
  readonly best: Direction;
}

function checkOptions(options: CompareSidesOptions): Settings {
  assertOptions(options, ['precision', 'claim', 'population', 'rate', 'best', 'resolution']);
  const { precision, claim, population = 'package', rate = 0.05, best = 'highest', resolution = 0 } = options;
  if (claim !== undefined) assertOneOf(claim, CLAIMS, 'options.claim');
  assertOneOf(population, POPULATIONS, 'options.population');
  assertOneOf(best, DIRECTIONS, 'options.best');
  assertBetween(rate, 0, 1, 'options.rate');
  if (typeof resolution !== 'number' || !(resolution >= 0 && resolution < Infinity)) {
    const expected = 'a number of 0 or more';
    throw new TintladderError('invalid-option', { path: 'options.resolution', received: resolution, expected });
  }
  return { known: knownVariances(precision), claim, population, rate, best, resolution };
}

function mostDegreesOfFreedom(pairs: readonly Pair[]): number {
  return Math.max(...pairs.flatMap(({ variance }) => variance?.joint.degreesOfFreedom ?? []));
}

function trialFamily({ trials }: PreparedGroup): Family[] {
  const loadings = trials.flatMap(({ variance }) =>
    variance ? [loadingOf(variance.joint.ofSecond, variance.joint.variance)] : [],
  );
  if (loadings.length === 0) return [];
  return [{ kind: 'many-to-one', loadings, degreesOfFreedom: mostDegreesOfFreedom(trials) }];
}

function pairFamily({ pairs }: PreparedGroup): Family[] {
  const all = pairs.filter(({ variance }) => variance !== undefined);
  const means = new Set(all.flatMap(({ first, second }) => [first.name, second.name])).size;
  return means < 2 ? [] : [{ kind: 'pairs', means, degreesOfFreedom: mostDegreesOfFreedom(all) }];
}
