import type { Figure } from './figure.js';
import type { PackageResult, Ranking } from './result.js';
import type { Study } from './study.js';

/** A package with all its figures, over every paint. */
export interface Contender {
  readonly result: PackageResult;
  readonly figures: readonly Figure[];
  /** Paints in which it was read. */
  readonly read: readonly string[];
}

/**
 * The figure that counts for a package: the worst over its paints, since a colorant must work in each of them.
 *
 * @returns undefined if the quantity was not found for the package
 */
export function worstFigure(
  figures: readonly Figure[],
  quantity: string,
  best: 'highest' | 'lowest',
): Figure | undefined {
  const own = figures.filter((figure) => figure.quantity === quantity);
  return own.reduce<Figure | undefined>(
    (worst, figure) =>
      worst === undefined || (best === 'highest' ? figure.value < worst.value : figure.value > worst.value)
        ? figure
        : worst,
    undefined,
  );
}

/**
 * Orders the packages without weights: those that meet every criterion by the quantity the study names, and the set that no
 * other package beats in every respect.
 *
 * @see the second is the Pareto set over the ranking quantity and every quantity with a one-sided limit
 */
export function rankPackages(study: Study, contenders: readonly Contender[]): Ranking {
  const { quantity, best } = study.rankBy;
  const sign = best === 'highest' ? -1 : 1;
  const value = ({ result }: Contender) => sign * (result.rankValue ?? -sign * Infinity);
  const ordered = [...contenders].sort((a, b) => (value(a) === value(b) ? 0 : value(a) - value(b)));
  const withOutcome = (outcome: string) =>
    ordered.filter(({ result }) => result.outcome === outcome).map(({ result }) => result.package.id);
  return {
    by: quantity,
    best,
    meeting: withOutcome('meets'),
    undecided: withOutcome('undecided'),
    failing: withOutcome('fails'),
    unbeaten: unbeaten(study, ordered),
  };
}

function unbeaten(study: Study, contenders: readonly Contender[]): string[] {
  const respects = respectsOf(study);
  const scores = contenders.map(({ figures }) =>
    respects.map(([quantity, best]) => {
      const figure = worstFigure(figures, quantity, best);
      // what was not measured can't beat anything
      if (figure === undefined) return -Infinity;
      return best === 'highest' ? figure.value : -figure.value;
    }),
  );
  const beats = (a: readonly number[], b: readonly number[]) =>
    a.every((score, i) => score >= b[i]) && a.some((score, i) => score > b[i]);
  return contenders
    .filter((_, i) => !scores.some((score) => beats(score, scores[i])))
    .map(({ result }) => result.package.id);
}

function respectsOf({ criteria, rankBy }: Study): (readonly [string, 'highest' | 'lowest'])[] {
  const oneSided = criteria
    .filter(({ lower, upper }) => (lower === undefined) !== (upper === undefined))
    .map(({ quantity, upper }) => [quantity, upper === undefined ? 'highest' : 'lowest'] as const);
  const all = [[rankBy.quantity, rankBy.best] as const, ...oneSided];
  return all.filter(([quantity], i) => all.findIndex(([other]) => other === quantity) === i);
}
