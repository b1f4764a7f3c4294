import { TintladderError } from '../../core/index.js';
import { assertBetween, assertObject, assertOptions } from '../../core/internal.js';
import { LEVELS, type Level, levelNoun, levelPlural, moreOfLevel } from '../readings/level.js';
import { knownVariances, type Precision } from '../variance/precision.js';
import { costOf, type Design, levelsOf } from './design.js';
import { criticalValues, designPower, type PlannedStudy } from './design-power.js';

/** What a measurement is made for: to decide on a difference, or to know a figure closely enough. */
export type MeasurementGoal =
  | {
      /** The difference that is to be decided on, if it is there. */
      readonly difference: number;
      /**
       * Chance to decide on it.
       *
       * @default 0.8
       */
      readonly power?: number | undefined;
    }
  | {
      /** Half the width of the joint interval. */
      readonly halfWidth: number;
    };

/** What {@link nextMeasurement} takes; standard deviations and goal in one unit, such as % of strength. */
export interface NextMeasurementOptions {
  /** Standard deviation of each level, from the outermost that is to be made anew inwards. */
  readonly components: Design;
  /** Cost of one unit of each of these levels, in minutes or in money. */
  readonly cost: Design;
  readonly goal: MeasurementGoal;
  /** What was made already, on each side. */
  readonly have?: Design | undefined;
  /** The laboratory's history, which serves where nothing is repeated and as a floor. */
  readonly precision?: Precision | undefined;
  /**
   * How many sides are made alike and compared with one of them; they share their scatter and one error rate.
   *
   * @default 2
   */
  readonly sides?: number | undefined;
  /** @default 0.05 */
  readonly rate?: number | undefined;
}

/** A way to measure, on each side. */
export interface MeasurementPlan {
  readonly design: Design;
  /** Of what is still to be made, each side. */
  readonly cost: number;
  /** Half the width of the joint interval to expect. */
  readonly halfWidth: number;
  /** Chance to decide on the goal's difference; absent for a goal of a half-width. */
  readonly power?: number;
}

/** What making more of one level alone would do. */
export interface LevelAlternative {
  readonly level: Level;
  /** The cheapest design that reaches the goal by more of this level; absent where none does, however many. */
  readonly plan?: MeasurementPlan;
  /** Power, or half-width, that it comes to at {@link MOST_UNITS} units. */
  readonly atMost: number;
}

/** What {@link nextMeasurement} gives. */
export interface NextMeasurement {
  readonly kind: 'next-measurement';
  readonly version: 1;
  /** The cheapest plan that reaches the goal; absent where none does. */
  readonly best?: MeasurementPlan;
  /** One for each level, outermost first. */
  readonly alternatives: readonly LevelAlternative[];
  readonly sentence: string;
}

/** Nobody makes more of anything. */
const MOST_UNITS = 40;
/** Inner levels soon bring nothing. */
const MOST_PARTS = 5;

/**
 * What to make next, by level and cost: which units, how many, and which would not help.
 *
 * Every design from what was made already upwards is tried; the cheapest that reaches the goal is the best. More units of an inner level only
 * average what lies below the units that scatter most, so that most often the outermost level is what is missing.
 *
 * @throws TintladderError `wrong-type`; `invalid-option`; `precision-invalid`
 * @example
 * const components = { weighing: 1.5, drawdown: 0.5, spot: 0.3 };
 * const cost = { weighing: 30, drawdown: 10, spot: 1 };
 * nextMeasurement({ components, cost, goal: { difference: 4 }, sides: 8 }).best.design // { weighing: 5, drawdown: 1, spot: 1 }
 * @see Cochran (1977), Sampling Techniques, chapter 10, for costs of nested units; power by the noncentral t distribution
 */
export function nextMeasurement(options: NextMeasurementOptions): NextMeasurement {
  const { study, cost, goal, have, levels } = checked(options);
  const once: Design = Object.fromEntries(levels.map((level) => [level, 1]));
  const made = have ? costOf({ ...once, ...have }, cost) : 0;
  const planOf = (design: Design): MeasurementPlan | undefined => {
    const expected = designPower(design, study);
    if (!expected) return undefined;
    const power = 'difference' in goal ? { power: expected.power(goal.difference) } : {};
    return { design, cost: costOf(design, cost) - made, halfWidth: expected.halfWidth, ...power };
  };
  const reaches = (plan: MeasurementPlan | undefined): plan is MeasurementPlan => {
    if (!plan) return false;
    return 'difference' in goal ? (plan.power ?? 0) >= (goal.power ?? POWER) : plan.halfWidth <= goal.halfWidth;
  };
  const alternatives = levels.map((level): LevelAlternative => {
    const from = have?.[level] ?? 1;
    const at = (count: number) => planOf({ ...once, ...have, [level]: count });
    const limit = at(MOST_UNITS);
    const atMost = ('difference' in goal ? limit?.power : limit?.halfWidth) ?? 0;
    if (!reaches(limit)) return { level, atMost };
    const plan = smallest(from, MOST_UNITS, at, reaches);
    return { level, atMost, ...(plan && { plan }) };
  });
  const best = cheapest({ ...once, ...have }, levels, planOf, reaches);
  return {
    kind: 'next-measurement',
    version: 1,
    ...(best && { best }),
    alternatives,
    sentence: sentenceOf(best, alternatives, have, levels, goal),
  };
}

const POWER = 0.8;

function checked(options: NextMeasurementOptions) {
  assertObject(options, 'options');
  assertOptions(options, ['components', 'cost', 'goal', 'have', 'precision', 'sides', 'rate']);
  const { components, cost, goal, precision, sides = 2, rate = 0.05 } = options;
  const positive = (value: unknown, path: string, expected = 'a positive number') => {
    if (typeof value === 'number' && value > 0 && value < Infinity) return;
    throw new TintladderError('invalid-option', { path, received: value, expected });
  };
  for (const [name, given] of Object.entries({ components, cost, have: options.have ?? {} })) {
    assertObject(given, `options.${name}`, 'numbers by level');
    assertOptions(given, LEVELS, `options.${name}`);
    for (const level of levelsOf(given)) positive(given[level], `options.${name}.${level}`);
  }
  const levels = levelsOf(components);
  if (levels.length === 0) positive(undefined, 'options.components', 'the standard deviation of at least one level');
  for (const level of levels) positive(cost[level], `options.cost.${level}`);
  for (const level of levelsOf(options.have ?? {})) {
    const path = `options.have.${level}`;
    if (!levels.includes(level)) positive(undefined, path, 'a level that has a component');
    if (!Number.isInteger(options.have?.[level])) positive(undefined, path, 'a whole number');
  }
  assertObject(goal, 'options.goal');
  assertOptions(goal, 'halfWidth' in goal ? ['halfWidth'] : ['difference', 'power'], 'options.goal');
  if ('halfWidth' in goal) positive(goal.halfWidth, 'options.goal.halfWidth');
  else {
    positive(goal.difference, 'options.goal.difference');
    assertBetween(goal.power ?? POWER, 0, 1, 'options.goal.power');
  }
  if (!Number.isInteger(sides) || sides < 2) positive(undefined, 'options.sides', 'a whole number from 2 on');
  assertBetween(rate, 0, 1, 'options.rate');
  const study: PlannedStudy = {
    components,
    known: knownVariances(precision),
    sides,
    criticalAt: criticalValues(sides, rate),
  };
  return { study, cost, goal, have: options.have, levels };
}

function smallest(
  from: number,
  to: number,
  at: (count: number) => MeasurementPlan | undefined,
  reaches: (plan: MeasurementPlan | undefined) => plan is MeasurementPlan,
): MeasurementPlan | undefined {
  let [low, high] = [from, to];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(at(middle))) high = middle;
    else low = middle + 1;
  }
  const plan = at(low);
  return reaches(plan) ? plan : undefined;
}

/** Of all inner designs the one whose smallest sufficient number of outermost units costs least. */
function cheapest(
  have: Design,
  levels: readonly Level[],
  planOf: (design: Design) => MeasurementPlan | undefined,
  reaches: (plan: MeasurementPlan | undefined) => plan is MeasurementPlan,
): MeasurementPlan | undefined {
  const [top, ...inner] = levels;
  const designs = inner.reduce<Design[]>(
    (list, level) =>
      list.flatMap((design) => {
        const from = have[level] ?? 1;
        const most = Math.max(MOST_PARTS, from);
        return Array.from({ length: most - from + 1 }, (_, i) => ({ ...design, [level]: from + i }));
      }),
    [{}],
  );
  const plans = designs.flatMap((design) => {
    const at = (count: number) => planOf({ [top]: count, ...design });
    return smallest(have[top] ?? 1, MOST_UNITS, at, reaches) ?? [];
  });
  return plans.length === 0 ? undefined : plans.reduce((least, plan) => (plan.cost < least.cost ? plan : least));
}

function sentenceOf(
  best: MeasurementPlan | undefined,
  alternatives: readonly LevelAlternative[],
  have: Design | undefined,
  levels: readonly Level[],
  goal: MeasurementGoal,
): string {
  const useless = alternatives
    .filter(({ plan, level }) => plan === undefined && level !== levels[0])
    .map(({ level }) => levelPlural(level));
  const rest = useless.length === 0 ? '' : `; more ${useless.join(' or ')} alone will not`;
  if (!best) {
    const most = levelNoun(levels[0], MOST_UNITS);
    return `Not even ${most} per side ${'difference' in goal ? 'decide' : 'reach'} it: the difference is too small for this scatter.`;
  }
  const parts = levels.flatMap((level): string[] => {
    const [now, then] = [have?.[level] ?? (have ? 1 : 0), best.design[level] ?? 1];
    if (level === levels[0])
      return then > now ? [`${have ? moreOfLevel(level, then - now) : levelNoun(level, then)} per side`] : [];
    const changed = then !== (have?.[level] ?? 1);
    return changed ? [`${levelNoun(level, then)} each`] : [];
  });
  const reached =
    best.power === undefined
      ? `reach ±${Number(best.halfWidth.toPrecision(2))}`
      : `decide with ${Math.round(100 * best.power)}\u00a0%`;
  if (parts.length === 0) return `What was made is enough: it should ${reached}.`;
  return `${parts.join(', ')} ${reached}${rest}.`;
}
