import { assertArray, assertNonEmptyArray, assertObject } from '../core/internal.js';
import {
  checkRule,
  type Decision,
  type DecisionFigure,
  type DecisionRule,
  decide,
  outcomeAt,
  riskOf,
} from './decide.js';
import type { Limit } from './limit.js';
import { type Outcome, worstOutcome } from './outcome.js';

/** Something that must meet all of its limits, such as a package over its paints and criteria. */
export interface ItemToDecide {
  readonly name: string;
  readonly figures: readonly (DecisionFigure & { readonly limit: Limit })[];
}

/** What was decided about it. */
export interface DecidedItem {
  readonly name: string;
  readonly outcome: Outcome;
  /** Of each figure, in their order, at the share of the risk that fell to the item. */
  readonly decisions: readonly Decision[];
  /** Chance to accept it wrongly that was left to it. */
  readonly risk: number;
}

/** What {@link decideAtOneRisk} gives. */
export interface Decisions {
  readonly kind: 'decisions';
  readonly version: 1;
  readonly rule: DecisionRule['rule'];
  /** Largest chance that any item is accepted wrongly. */
  readonly risk: number;
  readonly items: readonly DecidedItem[];
}

/**
 * Decides on several items so that the chance to accept any of them wrongly stays at the stated risk.
 *
 * An item must meet every one of its limits, so these need no correction (intersection-union); several items do. The surest is decided first, at
 * the risk divided by the number of items; each that is decided leaves more to the others (Holm), so that the last has the whole risk and a
 * single item loses nothing. By the rule `interval` the intervals given must hold jointly, as `joint` of `compareSides` does.
 *
 * @param items - each with all its figures and their limits
 * @param rule - and its risk, that of the whole study
 * @throws TintladderError as {@link decide}; `empty` for no item, or an item without figures
 * @example
 * const figures = [{ value: 3, standardDeviation: 1, limit: { lower: 0 } }];
 * decideAtOneRisk([{ name: 'A', figures }], { rule: 'conformance-probability', risk: 0.05 }).items[0].outcome // 'meets'
 * @see Holm (1979), Scand. J. Stat. 6, 65; Berger (1982), Technometrics 24, 295, for limits that must all be met
 */
export function decideAtOneRisk(items: readonly ItemToDecide[], rule: DecisionRule): Decisions {
  checkRule(rule);
  assertNonEmptyArray(items, 'items');
  const risk = riskOf(rule);
  const decided = items.map((item, i) => {
    assertObject(item, `items[${i}]`);
    const { name, figures } = item;
    assertArray(figures, `items[${i}].figures`);
    assertNonEmptyArray(figures, `items[${i}].figures`);
    const decisions = figures.map((figure) => {
      assertObject(figure, `items[${i}].figures`);
      return decide(figure, figure.limit, rule);
    });
    return { name, decisions, accept: accepting(decisions), refuse: refusing(decisions) };
  });
  const shares =
    rule.rule === 'interval'
      ? decided.map(() => ({ accept: risk, refuse: risk }))
      : zip(
          stepDown(
            decided.map(({ accept }) => accept),
            risk,
          ),
          stepDown(
            decided.map(({ refuse }) => refuse),
            risk,
          ),
        );
  return {
    kind: 'decisions',
    version: 1,
    rule: rule.rule,
    risk,
    items: decided.map(({ name, decisions }, i): DecidedItem => {
      const share = shares[i];
      const own = decisions.map((decision): Decision => {
        if (rule.rule === 'interval' || decision.conformance === undefined) return decision;
        const { conformance } = decision;
        // With several figures any one may refuse the item by chance, while all must fail to accept it wrongly.
        const refused = conformance <= share.refuse / decisions.length;
        const outcome = refused ? 'fails' : outcomeAt(conformance, share.accept) === 'meets' ? 'meets' : 'undecided';
        return { ...decision, outcome, consumersRisk: share.accept };
      });
      return { name, outcome: worstOutcome(own.map(({ outcome }) => outcome)), decisions: own, risk: share.accept };
    }),
  };
}

/** Chance that an item of these figures lies beyond a limit: that of its worst figure. */
function accepting(decisions: readonly Decision[]): number {
  return Math.max(...decisions.map(({ conformance, outcome }) => 1 - (conformance ?? (outcome === 'meets' ? 1 : 0))));
}

/** Chance that an item lies within all its limits though its worst figure says otherwise, for as many figures as could. */
function refusing(decisions: readonly Decision[]): number {
  const least = Math.min(...decisions.map(({ conformance, outcome }) => conformance ?? (outcome === 'fails' ? 0 : 1)));
  return Math.min(1, least * decisions.length);
}

/** The share of the risk that each chance is compared with, surest first, until one is not sure enough. */
function stepDown(chances: readonly number[], risk: number): number[] {
  const order = chances.map((_, i) => i).sort((a, b) => chances[a] - chances[b]);
  const shares = chances.map(() => 0);
  let left = chances.length;
  for (const i of order) {
    shares[i] = risk / left;
    if (chances[i] <= risk / left && left > 1) left--;
  }
  return shares;
}

function zip(accept: readonly number[], refuse: readonly number[]) {
  return accept.map((share, i) => ({ accept: share, refuse: refuse[i] }));
}
