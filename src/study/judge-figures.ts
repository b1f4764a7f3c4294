import { type Decision, type DecisionRule, decide, type Limit, type Outcome, worstOutcome } from '../decision/index.js';
import type { Figure } from './figure.js';
import { readingsToDecide } from './readings-to-decide.js';
import type { Judgement } from './result.js';
import type { Study } from './study.js';

/**
 * Compares the figures of a cell or package with the criteria that name them, by the rule of the study.
 *
 * The risk of the study is shared by the packages that are compared with the reference, so that the chance to accept any of them wrongly stays
 * at it (Bonferroni); all criteria of one must be met, which needs no share. A figure that lacks what its claim takes is undecided.
 *
 * @param figures - with their intervals; a figure without one is exact if it was supplied and undecided if it was computed
 * @param item - id of the package they belong to; a criterion may name its packages and paints
 * @param paint - the paint the figures belong to, absent for figures of the package as a whole
 */
export function judgeFigures(figures: readonly Figure[], study: Study, item: string, paint?: string): Judgement[] {
  const rule = ruleOf(study);
  return study.criteria.flatMap(({ quantity, lower, upper, unit, reason, paints, packages }) => {
    if (paint !== undefined && paints && !paints.includes(paint)) return [];
    if (packages && !packages.includes(item)) return [];
    const limit: Limit = { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) };
    return figures
      .filter((figure) => figure.quantity === quantity)
      .map((figure): Judgement => {
        const { value, interval, joint, claim, remedy } = figure;
        const decision = decideOn(figure, limit, rule);
        const outcome: Outcome = remedy === undefined ? decision.outcome : 'undecided';
        const needed = outcome === 'undecided' && remedy === undefined ? readingsToDecide(figure, limit) : undefined;
        return {
          quantity,
          ...(paint !== undefined && { paint }),
          limit,
          unit,
          reason,
          value,
          ...(interval && { interval }),
          ...(joint && { joint }),
          outcome,
          ...(decision.conformance !== undefined && { conformance: decision.conformance }),
          ...(decision.simpleAcceptance && { simpleAcceptance: true }),
          ...(claim !== undefined && { claim }),
          ...(remedy !== undefined && { remedy }),
          ...(needed !== undefined && {
            readingsNeeded: needed,
            ...(figure.scatter?.of && { readingsOf: figure.scatter.of }),
          }),
        };
      });
  });
}

/** The rule with the share of its risk that falls to one package. */
function ruleOf({ decision = { rule: 'interval' }, packages }: Study): DecisionRule {
  if (decision.rule === 'interval') return decision;
  return { ...decision, risk: decision.risk / Math.max(1, packages.length - 1) };
}

function decideOn(
  { value, interval, joint, uncertainty, exact, method, ratio }: Figure,
  limit: Limit,
  rule: DecisionRule,
): Decision {
  const used = joint ?? interval;
  // A ratio and its limits are compared as logarithms, on which it scatters evenly.
  const logarithmic =
    ratio === true && value > 0 && [limit.lower, limit.upper].every((end) => end === undefined || end > 0);
  const scaled = (x: number) => (logarithmic ? Math.log(x) : x);
  return decide(
    {
      value: scaled(value),
      ...(used && { interval: { low: scaled(used.low), high: scaled(used.high) } }),
      ...(uncertainty && {
        standardDeviation: logarithmic ? uncertainty.standardDeviation / value : uncertainty.standardDeviation,
        degreesOfFreedom: uncertainty.degreesOfFreedom,
      }),
      ...(exact && { without: method.startsWith('supplied') ? ('supplied' as const) : ('exact' as const) }),
    },
    {
      ...(limit.lower !== undefined && { lower: scaled(limit.lower) }),
      ...(limit.upper !== undefined && { upper: scaled(limit.upper) }),
    },
    rule,
  );
}

/** The worst outcome among judgements; a cell that nothing judges meets what was asked of it. */
export function outcomeOf(judgements: readonly Judgement[]): Outcome {
  return judgements.length === 0 ? 'meets' : worstOutcome(judgements.map(({ outcome }) => outcome));
}
