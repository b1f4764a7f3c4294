import { TintladderError } from '../core/index.js';
import { assertObject, assertOneOf, assertOptions, refuseNonFinite } from '../core/internal.js';
import { conformanceProbability } from './conformance-probability.js';
import type { Interval } from './interval.js';
import { judge } from './judge.js';
import type { Limit } from './limit.js';
import type { Outcome } from './outcome.js';

/** How a figure with its uncertainty is turned into an outcome. */
export const DECISION_RULES = ['interval', 'conformance-probability'] as const;

/**
 * A rule with its risk: by its `interval` a figure meets a limit if all of its 95 % interval does; by its `conformance-probability` if it
 * conforms with a probability of at least 1 - `risk`.
 */
export type DecisionRule =
  | { readonly rule: 'interval' }
  | {
      readonly rule: 'conformance-probability';
      /** Largest chance to accept what lies beyond its limit, and to refuse what lies within. */
      readonly risk: number;
    };

/** A figure to be decided on, with what is known of its uncertainty. */
export interface DecisionFigure {
  readonly value: number;
  /** 95 %; needed by the rule `interval`. */
  readonly interval?: Interval | undefined;
  /** Of the figure; needed by the rule `conformance-probability`. */
  readonly standardDeviation?: number | undefined;
  readonly degreesOfFreedom?: number | undefined;
  /**
   * What a figure without uncertainty is: `exact`, such as a count, or `supplied` from elsewhere and accepted as it stands. Undecided where
   * left out.
   */
  readonly without?: 'exact' | 'supplied' | undefined;
}

/** An outcome with what stands behind it. */
export interface Decision {
  readonly outcome: Outcome;
  /** Probability that the true value lies within the limit; absent where the uncertainty is unknown. */
  readonly conformance?: number;
  /** Largest chance that what meets the limit here lies beyond it in truth; 0 for what is exact, 0.5 for simple acceptance. */
  readonly consumersRisk: number;
  /** Whether a supplied figure was compared with its limit as if it were exact: half of what lies at its limit is accepted wrongly. */
  readonly simpleAcceptance: boolean;
}

/** The 95 % interval leaves this chance beyond each end. */
const RISK_OF_INTERVAL = 0.025;

/**
 * Decides on a figure by a stated rule, with the probability of conformance beside the outcome.
 *
 * @param figure - value and uncertainty
 * @param limit - `lower`, `upper` or both
 * @param rule - and its risk
 * @throws TintladderError `wrong-type`; `invalid-option` for an unknown rule or a risk that isn't between 0 and 0.5; `invalid-limit`,
 * `invalid-interval`, `not-finite`
 * @example decide({ value: 0.8, standardDeviation: 0.1 }, { upper: 1 }, { rule: 'conformance-probability', risk: 0.05 }).outcome // 'meets'
 * @example decide({ value: 0.8, without: 'supplied' }, { upper: 1 }, { rule: 'interval' }).simpleAcceptance // true
 * @see JCGM 106:2012, 8.2 (simple acceptance), 8.3 (guard bands) and 9 (consumer's and producer's risks)
 */
export function decide(figure: DecisionFigure, limit: Limit, rule: DecisionRule): Decision {
  checkRule(rule);
  assertObject(figure, 'figure', 'a value with its uncertainty');
  const { value, interval, standardDeviation, degreesOfFreedom, without } = figure;
  if (without !== undefined) assertOneOf(without, ['exact', 'supplied'], 'figure.without');
  if (standardDeviation !== undefined) refuseNonFinite(standardDeviation, 'figure.standardDeviation');
  const risk = riskOf(rule);
  if (standardDeviation === undefined && interval === undefined && without !== undefined) {
    const outcome = judge(value, { low: value, high: value }, limit);
    const supplied = without === 'supplied';
    return { outcome, consumersRisk: supplied ? 0.5 : 0, simpleAcceptance: supplied };
  }
  const conformance =
    standardDeviation !== undefined && standardDeviation > 0
      ? conformanceProbability({ value, standardDeviation, degreesOfFreedom }, limit)
      : undefined;
  const known = { consumersRisk: risk, simpleAcceptance: false, ...(conformance !== undefined && { conformance }) };
  // The limit and the interval are checked by whichever rule is used.
  const byInterval = judge(value, interval, limit);
  return { outcome: rule.rule === 'interval' ? byInterval : outcomeAt(conformance, risk), ...known };
}

/** What a probability of conformance says at a risk. */
export function outcomeAt(conformance: number | undefined, risk: number): Outcome {
  if (conformance === undefined) return 'undecided';
  return conformance >= 1 - risk ? 'meets' : conformance <= risk ? 'fails' : 'undecided';
}

/** The risk of a rule, for each limit. */
export function riskOf(rule: DecisionRule): number {
  return rule.rule === 'interval' ? RISK_OF_INTERVAL : rule.risk;
}

/** Refuses an unknown rule, or a risk that is none. */
export function checkRule(rule: DecisionRule): void {
  assertObject(rule, 'rule');
  assertOneOf(rule.rule, DECISION_RULES, 'rule.rule');
  assertOptions(rule, rule.rule === 'interval' ? ['rule'] : ['rule', 'risk'], 'rule');
  if (rule.rule === 'interval' || (rule.risk > 0 && rule.risk < 0.5)) return;
  const expected = 'a chance between 0 and 0.5';
  throw new TintladderError('invalid-option', { path: 'rule.risk', received: rule.risk, expected });
}
