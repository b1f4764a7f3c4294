export { conformanceProbability, type UncertainFigure } from './conformance-probability.js';
export { DECISION_RULES, type Decision, type DecisionFigure, type DecisionRule, decide } from './decide.js';
export { type DecidedItem, type Decisions, decideAtOneRisk, type ItemToDecide } from './decide-at-one-risk.js';
export type { Interval } from './interval.js';
export { judge } from './judge.js';
export type { Limit } from './limit.js';
export { OUTCOMES, type Outcome, worstOutcome } from './outcome.js';
