import { judge, type Outcome, worstOutcome } from '../decision/index.js';
import type { Figure } from './figure.js';
import { readingsToDecide } from './readings-to-decide.js';
import type { Judgement } from './result.js';
import type { AcceptanceCriterion } from './study.js';

/**
 * Compares the figures of a cell or package with the criteria that name them.
 *
 * @param figures - with their intervals; a figure without one is exact if it was supplied and undecided if it was computed
 * @param criteria - every criterion of the study; those on other quantities are passed over
 * @param item - id of the package they belong to; a criterion may name its packages and paints
 * @param paint - the paint the figures belong to, absent for figures of the package as a whole
 */
export function judgeFigures(
  figures: readonly Figure[],
  criteria: readonly AcceptanceCriterion[],
  item: string,
  paint?: string,
): Judgement[] {
  return criteria.flatMap(({ quantity, lower, upper, unit, reason, paints, packages }) => {
    if (paint !== undefined && paints && !paints.includes(paint)) return [];
    if (packages && !packages.includes(item)) return [];
    const limit = { lower, upper };
    return figures
      .filter((figure) => figure.quantity === quantity)
      .map((figure): Judgement => {
        const interval = figure.interval ?? (figure.exact ? { low: figure.value, high: figure.value } : undefined);
        const outcome: Outcome = judge(figure.value, interval, limit);
        return {
          quantity,
          paint,
          limit,
          unit,
          reason,
          value: figure.value,
          interval: figure.interval,
          outcome,
          readingsNeeded: outcome === 'undecided' ? readingsToDecide(figure, limit) : undefined,
        };
      });
  });
}

/** The worst outcome among judgements; a cell that nothing judges meets what was asked of it. */
export function outcomeOf(judgements: readonly Judgement[]): Outcome {
  return judgements.length === 0 ? 'meets' : worstOutcome(judgements.map(({ outcome }) => outcome));
}
