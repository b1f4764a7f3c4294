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

/** Orders the packages without weights, by the quantity that the study names: those that meet every criterion, the undecided, the failing. */
export function rankPackages(study: Study, contenders: readonly Contender[]): Omit<Ranking, 'notProvenWorse'> {
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
  };
}
