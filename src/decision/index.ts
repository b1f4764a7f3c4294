export type { Interval } from './interval.js';
export { judge } from './judge.js';
export type { Limit } from './limit.js';
export { OUTCOMES, type Outcome, worstOutcome } from './outcome.js';
